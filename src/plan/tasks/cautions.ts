/** Cautions printed where the hurt could happen. The words of one subject stand once. */
export const CAUTIONS = {
  sawDust: 'Dust: extraction on and a mask fitted before the first cut; MDF dust is fine and stays in the air.',
  sandDust: 'Dust: extraction or a vacuum on the sander, and a mask.',
  masonryDust:
    'Drilling masonry: shroud and vacuum on the drill, mask, eyes; stone and brick dust holds silica. Find cables and pipes first.',
  smokeAlarms: 'Cover smoke alarms while it is dusty and uncover them the same day.',
  saw: 'Hands: guard and riving knife on, push stick for narrow rips, blade still before you reach in.',
  power:
    'Electricity: power off and proved dead by the electrician before a device is opened or a back is cut over it.',
  lead: 'Old paint may hold lead: no dry sanding, no torch, no heat gun; wet methods, sealed sheeting, HEPA vacuum. Local code and licensed practice govern.',
  asbestos:
    'Old textured coatings, flue rope and boards may hold asbestos: stop when you meet them; sampling and removal are licensed work.',
  spray:
    'Spraying: air moving out of the room, mask for paint vapour, eyes and skin covered, flames and pilot lights out. The safety data sheet of the product governs.',
  ladder: 'Step: stand on a proper step, never on its top or on a box; both feet level.',
  tallFirst: 'Tall boxes are fixed to studs or masonry before doors, drawers or shelves go on: an unfixed one tips.',
  fixFirst: 'Boxes are fixed to studs or masonry before doors or shelves go on: an unfixed one can tip.',
  hotOpening:
    'Fire cold and out for a day, gas off at the appliance; nobody lights it while wood or paint stands in front.',
  manual: 'Local code, the appliance’s manual and licensed practice govern what may stand near the fire.',
  cables: 'Before each screw into the wall: detector over the line, no cable or pipe behind it.',
  trade: 'Done by the licensed trade only; you keep the room clear and note what they found.',
  climbing:
    'Drawers: a child who climbs on an open one can fall with it. Shown to the client; boxes stay fixed to the wall.',
  lowVoltage:
    'Lights: you work on the low-voltage side only, with the driver unplugged; the mains side is the electrician’s. Local code and licensed practice govern.',
  noLoad: 'No load on the shelves until the adhesive has had its time.',
} as const
