/** How much each kind of difference matters to the person at the keyboard; larger stands first. */
export const WEIGHTS = {
  newStop: 100,
  clearedStop: 95,
  newConfirm: 90,
  boxes: 80,
  heights: 75,
  shelves: 70,
  parts: 60,
  sheets: 55,
  finish: 50,
  price: 45,
  hours: 40,
  clearedConfirm: 35,
  layouts: 20,
  order: 15,
  part: 10,
} as const
