// Which sources each finding, limit and figure came with: sheet -> "caution overload" -> each list of them.
export function recordOf(answers) {
  const record = {};
  for (const answer of answers)
    for (const [kind, said] of [['caution', answer.cautions], ['limit', answer.limits], ['figure', answer.figures]])
      for (const { id, sources } of said ?? []) ((record[answer.sheet] ??= {})[`${kind} ${id}`] ??= new Set()).add(sources.join(' '));
  const sorted = (object, make) => Object.fromEntries(Object.keys(object).sort().map((key) => [key, make(object[key])]));
  return sorted(record, (of) => sorted(of, (lists) => [...lists].sort()));
}
