/**
 * Abbreviations that keep their full stop. Add one a line, lower case, without the last stop.
 * `inside`: a sentence never ends here. `maybe`: it ends when a capital follows.
 */
export const abbreviations = {
  inside: `
    vs
    approx
    fig
    figs
    e.g
    i.e
    cf
    ca
    no
    nos
    dr
    mr
    mrs
    ms
    prof
    st
    max
    min
    avg
    incl
    excl
    ref
    rec
    sec
    ch
    vol
    pp
    z.b
    bzw
    d.h
    evtl
    ggf
    resp
  `,
  maybe: `
    etc
    a.m
    p.m
    inc
    ltd
    co
    corp
    u.s
    u.k
    al
    in
    deg
    usw
  `,
} as const;

export function abbreviationSet(lines: string): ReadonlySet<string> {
  return new Set(lines.split(/\s+/).filter(Boolean));
}
