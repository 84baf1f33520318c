/** A record's name as a sentence says it: "Binder's board (grey board)" → "binder’s board". */
export function plainName(name: string): string {
  const bare = shortName(name);
  // the capital of a first word goes, that of an abbreviation stays
  return /^[A-Z][a-zé]/.test(bare) ? bare.charAt(0).toLowerCase() + bare.slice(1) : bare;
}

/** The same at the head of a line: "Binder’s board". */
export function shortName(name: string): string {
  return name
    .replace(/ \(.*\)$/, '')
    .replaceAll("'", '’')
    .replace(/(\d) : (\d)/g, '$1:$2');
}
