/**
 * Scripts that a page asks for by their address when somebody first uses a part of it. The bundler's own way to do that
 * brings a helper, which is longer than what asks, into every lesson before it is read.
 */
import type { APIRoute } from 'astro';
import { build } from 'esbuild';

/** An address that answers with a script and all that it imports, as one module. */
export const answerWith =
  (script: string): APIRoute =>
  async () => {
    const { outputFiles } = await build({
      entryPoints: [script],
      bundle: true,
      format: 'esm',
      minify: true,
      target: 'es2020',
      write: false,
    });
    return new Response(outputFiles[0]!.text, { headers: { 'Content-Type': 'text/javascript' } });
  };
