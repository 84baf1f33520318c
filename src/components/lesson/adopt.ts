/** Gives the page styles that came with a fetched script: sheets made by script are the page's own, and need no hash. */
export function adopt(css: string): void {
  // an old browser shows the same words without them
  if (!('adoptedStyleSheets' in document)) return;
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(css);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
}
