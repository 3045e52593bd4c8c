/** How much each kind of difference matters to the person at the keyboard; larger stands first. What is built comes before what is asked. */
export const WEIGHTS = {
  boxes: 90,
  heights: 85,
  shelves: 80,
  sheets: 75,
  finish: 70,
  price: 65,
  newStop: 60,
  newConfirm: 58,
  clearedStop: 56,
  clearedConfirm: 54,
  parts: 50,
  hours: 40,
  layouts: 20,
  order: 15,
  part: 10,
} as const
