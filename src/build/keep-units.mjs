// @ts-check

/** A number and its unit belong on one line; in the lessons they are typed with an ordinary space. */
const NUMBER_THEN_UNIT =
  /(\d) (?=(?:g\/m²|g\/cm³|g\/ml|g|kg|lb|µm|mm|cm|m|ml|l|s|min|h|Pa·s|mPa·s|kPa|N\/m|N·m\/g|°C|%|per cent)(?![\p{L}\d]))/gu;

/** Remark plugin: joins them with a no-break space, in text only, never in code or in attributes. */
export function keepUnits() {
  return (/** @type {unknown} */ tree) => joinIn(tree);
}

/** @param {any} node */
function joinIn(node) {
  if (node.type === 'text') node.value = joinUnits(node.value);
  for (const child of node.children ?? []) joinIn(child);
}

/** @param {string} text */
export function joinUnits(text) {
  return text.replace(NUMBER_THEN_UNIT, '$1\u00a0');
}
