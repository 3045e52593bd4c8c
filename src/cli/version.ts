import about from '../../package.json' with { type: 'json' }

/** `nichework 0.1.0`: stands in packets and on the papers. */
export const TOOL = `${about.name} ${about.version}`
