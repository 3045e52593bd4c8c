import { costing } from './costing/costing.ts'
import { cutList } from './cut-list/cut-list.ts'
import type { PacketDocument } from './document.ts'
import { drawings } from './drawings/drawings.ts'
import { installSequence } from './install-sequence/install-sequence.ts'
import { purchaseList } from './purchase-list/purchase-list.ts'
import { quote } from './quote/quote.ts'
import { requests } from './requests/requests.ts'
import { startHere } from './start-here/start-here.ts'
import { touchUpPlan } from './touch-up-plan/touch-up-plan.ts'

const BY_READER: readonly PacketDocument[] = [
  cutList,
  installSequence,
  touchUpPlan,
  drawings,
  requests,
  purchaseList,
  costing,
  quote,
]

/** Every document of the packet in printed order. Add one = one folder and one line above. */
export const DOCUMENTS: readonly PacketDocument[] = [startHere(BY_READER), ...BY_READER]
