import type { ChapterId, Field } from '../../things/field.ts'
import { BOX_INSIDE_FIELDS } from './box-inside.ts'
import { CABINET_FIELDS } from './cabinets.ts'
import { CARRYING_FIELDS } from './carrying.ts'
import { DRAWER_FIELDS } from './drawers.ts'
import { EXTRA_FIELDS } from './extras.ts'
import { FINISH_FIELDS } from './finish.ts'
import { FIREBOX_FIELDS } from './firebox.ts'
import { FLOOR_AND_TRIM_FIELDS } from './floor-and-trim.ts'
import { HARDWARE_FIELDS } from './hardware.ts'
import { INSTALL_FIELDS } from './install.ts'
import { JOB_FIELDS } from './job.ts'
import { LIGHT_FIELDS } from './lights.ts'
import { MAKE_OR_BUY_FIELDS } from './make-or-buy.ts'
import { MANTEL_FIELDS } from './mantel.ts'
import { PRICE_FIELDS } from './price.ts'
import { REMOVAL_FIELDS } from './removal.ts'
import { SHELF_FIELDS } from './shelves.ts'
import { WALL_FIELDS } from './wall.ts'

/** The chapters in the order they are asked, each with its questions in order. Add a question = one field in one chapter. */
export const CHAPTER_FIELDS: Readonly<Record<ChapterId, readonly Field[]>> = {
  job: JOB_FIELDS,
  wall: [...WALL_FIELDS, ...REMOVAL_FIELDS, ...CARRYING_FIELDS],
  firebox: FIREBOX_FIELDS,
  cabinets: [...CABINET_FIELDS, ...BOX_INSIDE_FIELDS, ...FLOOR_AND_TRIM_FIELDS, ...EXTRA_FIELDS],
  shelves: SHELF_FIELDS,
  mantel: MANTEL_FIELDS,
  'make-or-buy': MAKE_OR_BUY_FIELDS,
  finish: FINISH_FIELDS,
  hardware: [...HARDWARE_FIELDS, ...DRAWER_FIELDS, ...LIGHT_FIELDS],
  install: INSTALL_FIELDS,
  price: PRICE_FIELDS,
}

/** What the chapters are called on screen and paper. */
export const CHAPTER_NAMES: Readonly<Record<ChapterId, string>> = {
  job: 'Job',
  wall: 'Wall',
  firebox: 'Firebox',
  cabinets: 'Cabinets',
  shelves: 'Shelves',
  mantel: 'Mantel',
  'make-or-buy': 'Make or buy',
  finish: 'Finish',
  hardware: 'Hardware',
  install: 'Install',
  price: 'Price',
}
