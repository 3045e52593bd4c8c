import { CAUTIONS } from './cautions.ts'
import type { TaskDraft } from './draft.ts'
import { effort } from './efforts.ts'
import { ORDERS } from './office.ts'
import type { Workload } from './workload.ts'

/** Grooves and holes for strip lights, made before anything is put together or painted. */
export function lightGrooves(load: Workload): TaskDraft {
  const { lights, mount, parts } = load.built.lights
  const routed = parts.filter((p) => p.cutOuts.some((c) => c.what.startsWith('light')))
  return {
    id: 'W10',
    title:
      mount === 'groove' ? 'Rout the grooves and drill the holes for the lights' : 'Drill the holes for the lights',
    after: ['W1'],
    needed: lights.length > 0,
    efforts: [effort('light-groove', lights.length)],
    place: 'shop',
    work: 'cutting',
    marks: [...new Set(routed.map((p) => p.mark))],
    tools: ['router with a fence', 'drill', 'a piece of the profile', 'vacuum'],
    setOut: routed.flatMap((p) =>
      p.cutOuts
        .filter((c) => c.what.startsWith('light'))
        .map(
          (c) =>
            `${p.mark} ${p.piece ?? p.name}, ${c.what}: from its left ${load.show.length(c.x)}, ${load.show.length(c.z)} up; ${load.show.length(c.width)} × ${load.show.length(c.height)}.`,
        ),
    ),
    checks: ['One pass in scrap first: the profile drops in and its cover lies flush.'],
    cautions: [CAUTIONS.saw, CAUTIONS.sawDust],
  }
}

/** Strips, cables and drivers on the low-voltage side, tested before the doors are closed on them. */
export function lightFitting(load: Workload): TaskDraft {
  const { lights, drivers } = load.built.lights
  const { show } = load
  return {
    id: 'D8',
    title: 'Lights: strips in, drivers connected, tested',
    after: ['D4', 'F4', 'F10', 'B3', ORDERS.hardware],
    needed: lights.length > 0,
    efforts: [
      effort('light-strip', lights.length),
      effort(
        'light-driver',
        drivers.reduce((n, d) => n + d.count, 0),
      ),
    ],
    place: 'site',
    work: 'hanging',
    marks: [...new Set(lights.map((l) => l.mark))],
    tools: ['snips', 'soldering iron or clip connectors', 'meter', 'fish tape'],
    setOut: [
      ...lights.map(
        (l) => `${l.mark}, ${l.where}: strip ${show.length(l.strip)}, ${show.length(l.fromFront)} from the front edge.`,
      ),
      ...drivers.map(
        (d) =>
          `${d.bay.name}: ${d.count} × ${d.watts} W driver ${d.box === undefined ? 'within reach, outside the boxes' : `in ${d.box.mark}, on the side, air round it`}; the lights draw ${Math.round(d.load)} W.`,
      ),
    ],
    checks: [
      'Polarity by the meter before the driver is switched on; an hour burning, nothing hot.',
      'The driver comes out by hand, without a tool in anything built in.',
    ],
    cautions: [CAUTIONS.lowVoltage, CAUTIONS.ladder],
  }
}
