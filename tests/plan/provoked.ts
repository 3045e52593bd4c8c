import { readFileSync } from 'node:fs'
import { partitions } from '../../src/job/chapters/box-inside.ts'
import * as cabinets from '../../src/job/chapters/cabinets.ts'
import * as carrying from '../../src/job/chapters/carrying.ts'
import type { DrawerRow } from '../../src/job/chapters/drawers.ts'
import * as drawerQuestions from '../../src/job/chapters/drawers.ts'
import { extraParts } from '../../src/job/chapters/extras.ts'
import * as finish from '../../src/job/chapters/finish.ts'
import * as firebox from '../../src/job/chapters/firebox.ts'
import { plinthOn } from '../../src/job/chapters/floor-and-trim.ts'
import * as hardware from '../../src/job/chapters/hardware.ts'
import * as install from '../../src/job/chapters/install.ts'
import * as general from '../../src/job/chapters/job.ts'
import * as lighting from '../../src/job/chapters/lights.ts'
import * as mantel from '../../src/job/chapters/mantel.ts'
import { discount } from '../../src/job/chapters/price.ts'
import * as removal from '../../src/job/chapters/removal.ts'
import * as shelves from '../../src/job/chapters/shelves.ts'
import * as wall from '../../src/job/chapters/wall.ts'
import { breastDevices, type DeviceRow, devices } from '../../src/job/chapters/wall-devices.ts'
import { type Job, jobSchema, withAnswer } from '../../src/job/job.ts'
import { type Field, NOT_MEASURED } from '../../src/things/field.ts'
import { day } from '../../src/units/day.ts'
import { type Length, millimetres, ZERO } from '../../src/units/length.ts'
import { minorUnits } from '../../src/units/money.ts'
import { in_, wallOf } from './run-for-test.ts'

type Change = (job: Job) => Job
const put =
  <T>(field: Field<T>, place: string, value: T): Change =>
  (job) =>
    withAnswer(job, field, place, value)
const unmeasured =
  (field: Field, place: string): Change =>
  (job) =>
    withAnswer(job, field, place, NOT_MEASURED)
const from = (base: Job, ...changes: readonly Change[]): Job => changes.reduce((job, change) => change(job), base)

/** The demos: alcove (a), breast (b), alcove (c) in inches; one alcove (a) in millimetres with bought boxes. */
const demo = (name: string): Job =>
  jobSchema.parse(JSON.parse(readFileSync(new URL(`../../demo/${name}/job.json`, import.meta.url), 'utf8'))) as Job
const wide = demo('alcoves-inch')
const niche = demo('niche-metric')
/** A free-standing run on a flat wall. */
const flat = wallOf('inch', ['flat'])
  .put(wall.flatLength, 'a', in_(160))
  .put(wall.flatEnds, 'a', 'neither')
  .put(wall.ceiling, 'a', [in_(96)])
  .put(wall.floor, 'a', [{ x: ZERO, drop: ZERO }])
  .put(wall.baseboard, 'a', [ZERO, ZERO])
  .put(wall.wallKind, 'a', 'studs')
  .put(wall.studs, 'a', [in_(8), in_(24), in_(40), in_(56), in_(72), in_(88), in_(104), in_(120)])
  .put(devices, 'a', [])
  .put(cabinets.runLength, 'a', in_(60))
  .put(cabinets.runStart, 'a', in_(20)).job

const outlet = (x: number, z: number, more: Partial<DeviceRow> = {}): DeviceRow => ({
  what: 'outlet',
  wall: 'back',
  x: in_(x),
  z: in_(z),
  width: in_(2, 3, 4),
  height: in_(4, 1, 2),
  fate: 'keep',
  ...more,
})

/** An old painted mantel on the breast that comes off first. */
const comesOff = (more: Partial<removal.RemovalRow>): Change =>
  put(removal.removals, 'b', [
    {
      what: 'mantel',
      length: in_(60),
      height: in_(8),
      depth: in_(7),
      fixing: 'nailed',
      coat: 'painted',
      holds: 'nothing',
      ...more,
    },
  ])

/** Widths at two heights, at the back and at the mouth; how far the right side leans in at the upper one. */
const alcoveOf = (back: Length, front: Length, lean: Length = ZERO): Change =>
  put(wall.widths, 'a', [
    { height: in_(5), back, front, left: ZERO, right: ZERO },
    { height: in_(90), back, front, left: ZERO, right: lean },
  ])

/** The wide demo with drawers in its first run. */
const withDrawers = (rows: readonly DrawerRow[]): Job =>
  from(wide, put(drawerQuestions.drawersWanted, 'job', 'yes'), put(drawerQuestions.drawers, 'a', rows))

/** Just over the underside of the demo's mantel. */
const onBreast = { x: in_(20), z: in_(42), width: in_(3), height: in_(5) }

/** One job for each kind of message, by the kind's name: the smallest change from a base job that raises it. */
export const PROVOKED: Readonly<Record<string, Job>> = {
  boxTooNarrow: from(wide, put(cabinets.boxCount, 'a', 12)),
  fillerTooThin: from(wide, put(cabinets.fillerWidth, 'a', in_(0, 1, 4))),
  gapTooWideForCaulk: from(
    wide,
    put(wall.widths, 'a', [
      { height: in_(5), back: in_(44), front: in_(44), left: ZERO, right: ZERO },
      { height: in_(38), back: in_(43), front: in_(43), left: in_(1), right: ZERO },
    ]),
    put(cabinets.fitLeft, 'a', 'caulk'),
  ),
  boxDoesNotTilt: from(wide, put(cabinets.boxKind, 'a', 'tall'), put(cabinets.tallHeight, 'a', in_(96))),
  boxTooShallow: from(wide, put(cabinets.boxDepth, 'a', in_(4))),
  shelfTooShallow: from(wide, put(shelves.shelfSetBack, 'job', in_(12))),
  cutOutMeetsPart: from(wide, put(devices, 'a', [outlet(20, 14)])),
  deviceBuried: from(wide, put(devices, 'a', [outlet(12, 1)])),
  deviceCovered: from(wide, put(devices, 'a', [outlet(12, 14, { what: 'grille' })])),
  shelfMeetsDevice: from(wide, put(devices, 'a', [outlet(12, 58)])),
  leafTooBigForHinges: from(
    wide,
    put(cabinets.boxKind, 'a', 'tall'),
    put(hardware.leavesPerBox, 'job', 1),
    put(hardware.frontStyle, 'job', 'slab'),
    put(hardware.frontThickness, 'job', in_(1, 1, 2)),
  ),
  leafTooNarrow: from(
    wide,
    put(hardware.leavesPerBox, 'job', 4),
    put(hardware.hingeSheet, 'job', [in_(1, 3, 8), in_(3), in_(0, 1, 2)]),
  ),
  leafTooThin: from(wide, put(hardware.frontThickness, 'job', in_(0, 1, 2))),
  mantelTooShallow: from(wide, put(mantel.mantelDepth, 'b', in_(2))),
  panelTooSmall: from(wide, put(hardware.stileWidth, 'job', in_(6)), put(hardware.leavesPerBox, 'job', 2)),
  shelfHasNoVoid: from(wide, put(shelves.skinThickness, 'job', in_(1)), put(shelves.shelfThickness, 'a', in_(2))),
  shelvesDoNotFit: from(wide, put(shelves.shelfCount, 'a', 12)),
  shelfCannotPass: from(wide, alcoveOf(in_(44), in_(40))),
  runInHearthZone: from(
    wide,
    put(firebox.opening, 'b', [in_(2), ZERO, in_(30), in_(27)]),
    put(cabinets.boxDepth, 'a', in_(24)),
  ),
  looseShelfSags: from(
    flat,
    put(cabinets.runLength, 'a', in_(90)),
    put(cabinets.boxCount, 'a', 1),
    put(cabinets.looseShelves, 'job', 1),
  ),
  feetDoNotReach: from(wide, put(plinthOn, 'job', 'feet'), put(cabinets.kick, 'job', in_(12))),
  partitionHasNoRoom: from(wide, put(partitions, 'a', [{ box: 1, what: 'divider', at: in_(1) }])),
  shelfPullsOut: from(
    flat,
    put(shelves.shelfCount, 'a', 1),
    put(shelves.shelfLength, 'a', in_(36)),
    put(shelves.shelfDepth, 'a', in_(24)),
  ),
  shelfTooWeak: from(wide, put(shelves.shelfLoad, 'job', 'books'), put(shelves.shelfThickness, 'a', in_(1, 1, 4))),
  woodTooClose: from(wide, put(mantel.mantelUnderside, 'b', in_(29))),
  manualMissing: from(wide, put(firebox.fuel, 'b', 'gas')),
  notMasonry: from(wide, put(firebox.realMasonry, 'b', false)),
  largerThanSheet: from(flat, put(cabinets.runLength, 'a', in_(120)), put(cabinets.boxCount, 'a', 1)),
  coatingNotHere: from(
    wide,
    put(finish.builtInSystem, 'job', 'two-component-polyurethane'),
    put(finish.paintPlace, 'job', 'site'),
  ),
  belowDirectCost: from(wide, put(discount, 'job', minorUnits(1_000_000))),
  overMinorWork: from(
    wide,
    put(general.houseYear, 'job', 1950),
    put(wall.baseboard, 'a', [in_(16), in_(0, 5, 8)]),
    put(cabinets.baseboardFate, 'job', 'remove'),
  ),
  paintDemolished: from(wide, put(general.houseYear, 'job', 1950), comesOff({ fixing: 'glued', what: 'panel' })),
  leadFirmNamed: from(
    wide,
    put(general.houseYear, 'job', 1950),
    put(removal.leadFirm, 'job', 'Invented Renovation, certificate 0000 (invented)'),
    comesOff({ fixing: 'glued', what: 'panel' }),
  ),
  oldPieceMayHoldLead: from(wide, comesOff({ year: 1910 })),
  mayHoldAsbestos: from(wide, comesOff({ what: 'floor', coat: 'bare' })),
  grooveTooDeep: from(wide, put(lighting.lights, 'job', 'shelves'), put(lighting.lightMount, 'job', 'groove')),
  noPlaceForCable: from(
    wide,
    put(lighting.lights, 'job', 'shelves'),
    put(shelves.skinThickness, 'job', in_(0, 1, 2)),
    put(shelves.shelfThickness, 'a', in_(1, 1, 2)),
  ),
  driverOutside: from(wide, put(lighting.lights, 'job', 'shelves'), put(lighting.lightDriver, 'job', 'elsewhere')),
  extrasAsGiven: from(
    wide,
    put(extraParts, 'a', [{ what: 'cornice', length: in_(40), width: in_(3), thickness: in_(0.75), coat: 'coated' }]),
  ),
  mainsByElectrician: from(wide, put(lighting.lights, 'job', 'boxes')),
  boxDoesNotComeIn: from(wide, put(carrying.smallestDoor, 'job', [in_(14), in_(78)])),
  pieceDoesNotComeIn: from(wide, put(carrying.narrowTurn, 'job', [in_(16), in_(16)])),
  sheetDoesNotComeIn: from(wide, put(carrying.narrowTurn, 'job', [in_(30), in_(30)])),
  plinthTooShallow: from(wide, put(cabinets.boxDepth, 'a', in_(8)), put(cabinets.kickSet, 'job', in_(6))),
  runBeyondWall: from(flat, put(cabinets.runLength, 'a', in_(150))),
  shelfHeightsCount: from(wide, put(shelves.shelfCount, 'a', 2)),
  unusableSurvey: from(wide, put(wall.floor, 'a', [{ x: ZERO, drop: in_(-1) }])),
  widthsDoNotFill: from(wide, put(cabinets.boxWidths, 'a', [in_(20), in_(20)])),
  gapTooWide: from(wide, alcoveOf(in_(44), in_(41)), put(wall.ceiling, 'a', [in_(42)])),
  notByThatMethod: from(wide, put(finish.paintMethod, 'job', 'hand')),
  surveyOutside: from(wide, alcoveOf(in_(44), in_(44), in_(3))),
  surveyResidual: from(
    wide,
    put(wall.widths, 'a', [
      { height: in_(5), back: in_(44), front: in_(44), left: ZERO, right: ZERO },
      { height: in_(90), back: in_(44), front: in_(44), left: in_(1), right: ZERO },
    ]),
  ),
  fillerWide: from(wide, put(cabinets.fillerWidth, 'a', in_(3))),
  plinthHigh: from(wide, put(wall.baseboard, 'a', [in_(9), in_(0, 5, 8)])),
  boxesStandProud: from(wide, put(cabinets.boxDepth, 'a', in_(14, 1, 4))),
  boxesPastReturn: from(wide, put(cabinets.boxDepth, 'a', in_(15))),
  boxesNeedBlocking: from(wide, put(wall.wallKind, 'a', 'hollow')),
  shelfNeedsBlocking: from(wide, put(wall.studs, 'a', [in_(22)])),
  shelfOnAnchors: from(flat, put(wall.wallKind, 'a', 'masonry'), put(shelves.shelfCount, 'a', 2)),
  shelfEndStrip: from(wide, alcoveOf(in_(44, 3, 4), in_(44))),
  mantelPastBreast: from(wide, put(mantel.mantelLength, 'b', in_(60))),
  breastDeviceCovered: from(wide, put(breastDevices, 'b', [{ ...onBreast, what: 'outlet', fate: 'keep' }])),
  breastOpeningCovered: from(wide, put(breastDevices, 'b', [{ ...onBreast, what: 'gas-tap', fate: 'keep' }])),
  paintNearFire: from(wide, (job) => withAnswer(job, firebox.paintHeat, 'b', undefined)),
  noBoxForCable: from(wide, put(cabinets.boxKind, 'a', 'none'), put(firebox.cableTo, 'b', 'left')),
  cableInFlue: from(wide, put(firebox.cable, 'b', 'breast-void')),
  deepMantelLow: wide,
  legInHearthZone: from(wide, put(mantel.mantelLegs, 'b', true), put(firebox.hearth, 'b', [in_(18), in_(4), in_(4)])),
  legNotBuildable: from(wide, put(mantel.mantelLegs, 'b', true), put(mantel.legDepth, 'b', in_(0, 1, 2))),
  cableHoleTight: from(wide, put(mantel.mantelDepth, 'b', in_(4)), put(firebox.cable, 'b', 'through-mantel')),
  screenCrowded: from(wide, put(firebox.tvPlace, 'b', [in_(1), in_(54), in_(59), in_(33)])),
  screenHeatUnknown: from(wide, unmeasured(firebox.tvHeat, 'b')),
  screenTooLow: from(wide, put(firebox.tvHeat, 'b', in_(60))),
  heavyLift: from(wide, put(install.secondPair, 'job', 'never')),
  woodAgainstBreast: wide,
  sprayingOnSite: from(wide, put(finish.paintPlace, 'job', 'site')),
  woodInHotMasonry: from(wide, put(firebox.linings, 'b', [in_(8), in_(8), in_(8), in_(8)])),
  codeNeedsReading: from(wide, put(firebox.clearanceRule, 'b', 'canada')),
  codeNotKnown: from(wide, put(firebox.clearanceRule, 'b', 'unknown')),
  hearthNotMeasured: from(wide, unmeasured(firebox.hearth, 'b')),
  hearthTooSmall: from(wide, put(firebox.hearth, 'b', [in_(12), in_(12), in_(12)])),
  fireBesideNotMeasured: from(wide, put(cabinets.boxDepth, 'a', in_(17)), unmeasured(firebox.opening, 'b')),
  masonryNotConfirmed: from(wide, unmeasured(firebox.realMasonry, 'b')),
  paintMayHoldLead: from(wide, put(general.houseYear, 'job', 1950)),
  heldBeyond: from(wide, put(wall.widths, 'a', [{ height: in_(20), back: in_(44), front: in_(44) }])),
  oneFaceMeasured: from(wide, put(wall.widths, 'a', [{ height: in_(20), back: in_(44) }])),
  leanSplit: from(
    wide,
    put(wall.widths, 'a', [
      { height: in_(5), back: in_(44), front: in_(44) },
      { height: in_(90), back: in_(43), front: in_(43) },
    ]),
  ),
  squareSplit: wide,
  leafBesideWall: from(wide, put(cabinets.fitLeft, 'a', 'caulk')),
  floorFalls: from(
    wide,
    put(wall.floor, 'a', [
      { x: ZERO, drop: ZERO },
      { x: in_(44), drop: in_(1, 1, 2) },
    ]),
  ),
  hardwareGeneric: wide,
  hingesDoNotLap: from(wide, put(cabinets.carcassThickness, 'job', in_(1, 1, 4))),
  drawersNowhere: withDrawers([{ box: 9 }]),
  drawerFrontsDoNotFit: withDrawers([
    { box: 1, height: in_(9) },
    { box: 1, height: in_(16) },
  ]),
  drawerTooLow: withDrawers(Array.from({ length: 9 }, () => ({ box: 1 }))),
  noSlideFits: from(withDrawers([{ box: 1 }]), put(cabinets.boxDepth, 'a', in_(9))),
  nailerCrossed: from(wide, put(devices, 'a', [outlet(12, 29)])),
  turningRoom: wide,
  returnsDiffer: from(wide, put(wall.returns, 'a', [in_(14), in_(16)])),
  tapeTooLong: wide,
  dryingFromTheTin: wide,
  sheetsOnHold: from(wide, unmeasured(wall.widths, 'a')),
  kickRaised: from(wide, put(cabinets.kick, 'job', in_(2))),
  startAlreadyPast: from(wide, put(general.startDay, 'job', day('2026-11-02'))),
  notADay: from(wide, put(install.daysOff, 'job', 'christmas')),
  readyMadeFits: from(niche, put(cabinets.boxHeight, 'job', millimetres(760))),
  readyMadeDoesNotFit: from(niche, put(cabinets.boxHeight, 'job', millimetres(745))),
}
