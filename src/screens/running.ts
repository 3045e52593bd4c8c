import type { JobStore } from '../archive/job-store.ts'
import type { OwnFigures } from '../figures/own-figures.ts'
import type { Session } from '../interview/session.ts'
import type { Job } from '../job/job.ts'
import type { Day } from '../units/day.ts'
import { type Draw, inWindow, type Size } from './frame.ts'
import { type Home, homePage } from './home.ts'
import type { Key } from './keys/key.ts'
import type { Look } from './look.ts'
import type { Scene } from './scene.ts'

/** The world the screens run in. */
export interface ProgramPorts {
  readonly store: JobStore
  readonly today: Day
  readonly newId: () => string
  /** The invented job; read only when it is chosen. */
  readonly demoJob?: (() => Promise<Job>) | undefined
  /** The person's own figures as their folder has them now: stamped into a job that is begun. Throws InputUnreadable. */
  readonly ownFigures?: (() => Promise<OwnFigures>) | undefined
  readonly writePacket: (
    job: Job,
    onProgress: (words: string) => void,
  ) => Promise<{ path: string; files: number; job: Job }>
  /** Called with each new scene, and how it is drawn: the pages of a job are loaded with the first job. */
  readonly show: (scene: Scene, draw: Draw) => void
  /** The window as it is now: how far a page leads depends on what is seen. */
  readonly window: () => { readonly size: Size; readonly look: Look }
  /** Resolves once the last scene has been drawn: the plan is worked out after the echo frame, never before it. */
  readonly drawn: () => Promise<void>
}

/** The one thing that changes: what is shown, and the keys still to be taken. */
export interface Running {
  readonly ports: ProgramPorts
  readonly queue: Key[]
  scene: Scene
  /** Whether leaving with an unsaved answer was asked about. */
  asked: 'not yet' | 'asked'
  leave?: (session: Session | undefined) => void
  fail?: (fault: unknown) => void
}

/** Shows the list of jobs. */
export function showHome(run: Running, home: Home): void {
  run.scene = { kind: 'home', home }
  run.ports.show(run.scene, (size, look) => inWindow(size, look, (layout) => homePage(layout, home)))
}

/** The list of jobs as it is kept now, its first line chosen. */
export const homeOf = async ({ store, demoJob }: ProgramPorts): Promise<Home> => ({
  jobs: await store.list(),
  hasDemo: demoJob !== undefined,
  line: 0,
  filter: '',
  problem: '',
})
