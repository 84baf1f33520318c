/** TeX to MathML at build. */
import temml from 'temml';

/** Throws on TeX that temml cannot read, so that a slip stops the build instead of standing on the page in red. */
export function mathml(tex: string, display = false): string {
  const html = temml.renderToString(tex, { displayMode: display, throwOnError: true });
  // The content security policy refuses style attributes; what they say of display the `display` attribute says too.
  return html.replaceAll(/ (?:style|class)="[^"]*"/g, '');
}
