/**
 * What a reader who knows workshops hears in the words of a step: each pattern, and the caution that it calls for. It
 * knows nothing of what the steps say of themselves (`does`, `celsius`), so that the two can be held together.
 */
export const IN_STEPS: readonly (readonly [words: RegExp, caution: string])[] = [
  [/\b(?:4[5-9]|[5-9]\d|100)\s?°C|\b(?:4[5-9]|[5-9]\d) to \d+\s?°C/, 'hot-liquid'],
  [/\b(?:hot water|simmering|boiling|double boiler|microwave|hot paste|glue pot|steam burns)\b/i, 'hot-liquid'],
  [/^(?:Cook|Heat|Melt|Warm) (?:it\b|the\b|a\b|\d)/, 'hot-liquid'],
  [/\birons?\b/i, 'hot-iron'],
  [/\b(?:cut|cuts|trim|trimmed|mitre|slits|knife|scalpel|blade|scissors)\b/i, 'knife'],
  [/\b(?:guillotine|board shear)s?\b|\bcut the boards\b/i, 'guillotine'],
  [/\bunder (?:a board and |a |light |more )*weights?\b|\bwith weights\b/i, 'press'],
  [/\b(?:powder on it|of powder|of starch into|of gelatine\. Pour|the starch, stir|dry powder on)\b/i, 'powder-dust'],
  [/\b(?:alcohol|solvent|ethanol|acetone)\b/i, 'solvent-fumes'],
  [/\bspray(?:ed)? (?:adhesive|glue|it)\b/i, 'spray-fumes'],
  [/\bcontact adhesive\b/i, 'contact-fumes'],
  [/\bgelatine|\banimal glue|\bfish glue/i, 'animal-allergen'],
  [/\bwheat|\bflour\b/i, 'flour-allergen'],
  [/\b(?:put|add|stir|brush|spread|look at|open)\b[^.]*\b(?:PVA|EVA)\b/i, 'ready-made-glue'],
  [/\bfrozen\b|\bfrost\b/i, 'frost'],
  [/\b(?:saw|sand|plywood|MDF)\b/i, 'wood-dust'],
  [/\bsheet of glass\b|\bglass plate\b/i, 'sharp-edges'],
  [/\bmouldy?\b/i, 'mould'],
];

/** In running prose only what a lesson that names it must warn of, whoever does it. */
export const IN_PROSE: readonly (readonly [words: RegExp, caution: string])[] = [
  [/\b(?:tacking iron|under an iron|an iron)\b/i, 'hot-iron'],
  [/\b(?:glue pot|hot pot|boiling water|simmering)\b/i, 'hot-liquid'],
  [/\bcontact adhesives?\b/i, 'contact-fumes'],
  [/\bsolvents?\b|\bliquid is\s+alcohol\b/i, 'solvent-fumes'],
  [/\bspray adhesives?\b/i, 'spray-fumes'],
  [/\b(?:gelatine|animal glue|fish glue)\b/i, 'animal-allergen'],
  [/\b(?:cook(?:ing)? (?:paste|starch)|wheat flour|cooks? it)\b/i, 'flour-allergen'],
  [/\bgrandmother|\bheirloom|\bvalued (?:original|thing)/i, 'valued-original'],
  [/\b(?:old books?|old bindings?|grandmother’s)\b/i, 'old-pigments'],
  [/\b(?:guillotine|board shear)s?\b/i, 'guillotine'],
  [/\bwith (?:a|the|your) (?:new |sharp |fresh )*(?:knife|scalpel|blade|scissors)\b/i, 'knife'],
  [/\bcut (?:them|two|six|pieces|squares?|strips?|to size)\b/i, 'knife'],
];

/** Cautions that these words call for and that are not among those shown, each with the words. */
export function unsaid(
  text: string,
  shown: readonly string[],
  words: readonly (readonly [RegExp, string])[],
): readonly string[] {
  return words.flatMap(([pattern, caution]) => {
    const found = pattern.exec(text);
    return found && !shown.includes(caution) ? [`${caution}: “${found[0]}” in “${text.slice(0, 80)}”`] : [];
  });
}
