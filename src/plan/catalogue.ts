import type { MessageKind } from '../things/message.ts'
import {
  boxDoesNotTilt,
  boxesPastReturn,
  boxesStandProud,
  boxTooShallow,
  looseShelfSags,
  partitionHasNoRoom,
  widthsDoNotFill,
} from './boxes/box-messages.ts'
import { woodAgainstBreast, woodInHotMasonry } from './by-fire/beside-breast-messages.ts'
import { fireBesideNotMeasured, runInHearthZone } from './by-fire/by-fire-messages.ts'
import { startAlreadyPast } from './calendar/calendar.ts'
import { notADay } from './calendar/days-off.ts'
import { recoatTooLate } from './calendar/recoat.ts'
import { boxDoesNotComeIn, pieceDoesNotComeIn, sheetDoesNotComeIn } from './carrying-in/carrying-messages.ts'
import { coatingNotHere, dryingFromTheTin, notByThatMethod, sprayingOnSite } from './coating/coating-messages.ts'
import { cutOutMeetsPart, deviceBuried, deviceCovered, nailerCrossed } from './devices/device-messages.ts'
import { extrasAsGiven } from './extras/extra-messages.ts'
import { heavyLift } from './fixings/carrying.ts'
import { boxesNeedBlocking } from './fixings/wall-fixings.ts'
import {
  drawerFrontsDoNotFit,
  drawersNowhere,
  drawerTooLow,
  hardwareGeneric,
  noSlideFits,
} from './fronts/drawer-messages.ts'
import {
  hingesDoNotLap,
  leafTooBigForHinges,
  leafTooNarrow,
  leafTooThin,
  panelTooSmall,
} from './fronts/front-messages.ts'
import { gapTooWide, manyPasses } from './joints/joint-messages.ts'
import { learnedClipped } from './learning/learning-messages.ts'
import { driverOutside, grooveTooDeep, mainsByElectrician, noPlaceForCable } from './lights/light-messages.ts'
import { readyMadeDoesNotFit, readyMadeFits } from './make-or-buy/ready-made-messages.ts'
import { breastDeviceCovered, breastOpeningCovered } from './mantel/breast-devices.ts'
import { cableHoleTight, cableInFlue } from './mantel/cable.ts'
import { noBoxForCable } from './mantel/cable-holes.ts'
import { woodTooClose } from './mantel/clearance.ts'
import {
  codeNeedsReading,
  codeNotKnown,
  hearthNotMeasured,
  hearthTooSmall,
  manualMissing,
  masonryNotConfirmed,
  notMasonry,
} from './mantel/firebox-messages.ts'
import {
  deepMantelLow,
  legInHearthZone,
  legNotBuildable,
  mantelPastBreast,
  mantelTooShallow,
} from './mantel/mantel-messages.ts'
import { paintNearFire } from './mantel/masonry-face.ts'
import { screenCrowded, screenHeatUnknown, screenTooLow } from './mantel/screen.ts'
import { largerThanSheet } from './panels/oversize.ts'
import { sheetsOnHold } from './panels/panels.ts'
import { belowDirectCost } from './price/messages.ts'
import { floorFalls, kickRaised, plinthHigh, plinthTooShallow } from './run/level-messages.ts'
import { feetDoNotReach } from './run/levellers.ts'
import {
  boxTooNarrow,
  fillerTooThin,
  fillerWide,
  gapTooWideForCaulk,
  heldBeyond,
  leafBesideWall,
  runBeyondWall,
} from './run/slot-messages.ts'
import {
  returnsDiffer,
  shelfCannotPass,
  shelfEndStrip,
  shelfHasNoVoid,
  shelfHeightsCount,
  shelfMeetsDevice,
  shelfNeedsBlocking,
  shelfOnAnchors,
  shelfPullsOut,
  shelfTooShallow,
  shelfTooWeak,
  shelvesDoNotFit,
  turningRoom,
} from './shelves/shelf-messages.ts'
import {
  leadFirmNamed,
  mayHoldAsbestos,
  oldPieceMayHoldLead,
  overMinorWork,
  paintDemolished,
  paintMayHoldLead,
} from './strip-out/old-paint-messages.ts'
import {
  leanSplit,
  oneFaceMeasured,
  squareSplit,
  surveyOutside,
  surveyResidual,
  unusableSurvey,
} from './survey/survey-messages.ts'
import { tapeTooLong } from './tasks/tape-time.ts'

/** Every kind of message the plan can raise: stops, confirms, notes, by code. A code may have several kinds, one for each cause. */
export const CATALOGUE: readonly MessageKind<never>[] = [
  boxTooNarrow,
  fillerTooThin,
  gapTooWideForCaulk,
  boxDoesNotTilt,
  boxTooShallow,
  boxesPastReturn,
  shelfTooShallow,
  cutOutMeetsPart,
  deviceBuried,
  deviceCovered,
  breastDeviceCovered,
  breastOpeningCovered,
  shelfMeetsDevice,
  leafTooBigForHinges,
  leafTooNarrow,
  leafTooThin,
  hingesDoNotLap,
  drawerFrontsDoNotFit,
  drawersNowhere,
  drawerTooLow,
  noSlideFits,
  mantelTooShallow,
  legNotBuildable,
  panelTooSmall,
  shelfHasNoVoid,
  shelvesDoNotFit,
  shelfCannotPass,
  runInHearthZone,
  legInHearthZone,
  looseShelfSags,
  feetDoNotReach,
  partitionHasNoRoom,
  shelfPullsOut,
  shelfTooWeak,
  woodTooClose,
  woodInHotMasonry,
  cableInFlue,
  manualMissing,
  notMasonry,
  largerThanSheet,
  coatingNotHere,
  belowDirectCost,
  overMinorWork,
  paintDemolished,
  grooveTooDeep,
  noPlaceForCable,
  plinthTooShallow,
  runBeyondWall,
  shelfHeightsCount,
  unusableSurvey,
  widthsDoNotFill,
  gapTooWide,
  notByThatMethod,
  surveyOutside,
  surveyResidual,
  fillerWide,
  plinthHigh,
  boxesStandProud,
  boxesNeedBlocking,
  shelfNeedsBlocking,
  shelfOnAnchors,
  shelfEndStrip,
  mantelPastBreast,
  cableHoleTight,
  noBoxForCable,
  screenCrowded,
  screenHeatUnknown,
  screenTooLow,
  manyPasses,
  heavyLift,
  recoatTooLate,
  woodAgainstBreast,
  sprayingOnSite,
  codeNeedsReading,
  codeNotKnown,
  fireBesideNotMeasured,
  hearthNotMeasured,
  hearthTooSmall,
  masonryNotConfirmed,
  paintNearFire,
  paintMayHoldLead,
  leadFirmNamed,
  oldPieceMayHoldLead,
  mayHoldAsbestos,
  driverOutside,
  boxDoesNotComeIn,
  pieceDoesNotComeIn,
  sheetDoesNotComeIn,
  mainsByElectrician,
  extrasAsGiven,
  heldBeyond,
  oneFaceMeasured,
  leanSplit,
  squareSplit,
  leafBesideWall,
  floorFalls,
  hardwareGeneric,
  nailerCrossed,
  deepMantelLow,
  turningRoom,
  returnsDiffer,
  tapeTooLong,
  dryingFromTheTin,
  sheetsOnHold,
  kickRaised,
  startAlreadyPast,
  notADay,
  learnedClipped,
  readyMadeFits,
  readyMadeDoesNotFit,
]
