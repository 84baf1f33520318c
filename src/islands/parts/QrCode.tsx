/** The link as a square that a phone reads. The library is fetched only when a code is to be shown. */
import { useEffect, useState } from 'preact/hooks';
import { nextTurn } from '../../stores/shared/precompute';

interface Code {
  readonly path: string;
  readonly size: number;
}

async function codeOf(text: string): Promise<Code> {
  const { encode } = await import('uqr');
  // several codes on a page, drawn one after another, let a thumb in between
  await nextTurn();
  const { data, size } = encode(text, { ecc: 'M', border: 2 });
  // what is drawn of it is a turn of its own, for together they hold a slow phone for 70 ms
  await nextTurn();
  const path = data.flatMap((row, y) => row.map((dark, x) => (dark ? `M${x} ${y}h1v1h-1z` : ''))).join('');
  return { path, size };
}

export function QrCode({ text }: { readonly text: string }) {
  const [code, show] = useState<Code>();
  useEffect(() => {
    let wanted = true;
    // After a pause, so that typing does not draw a code for every key.
    const timer = setTimeout(() => void codeOf(text).then((found) => wanted && show(found)), 400);
    return () => {
      wanted = false;
      clearTimeout(timer);
    };
  }, [text]);
  if (!code) return null;
  return (
    <svg
      class="qr"
      viewBox={`0 0 ${code.size} ${code.size}`}
      role="img"
      aria-label="Code of the link to this answer"
      shape-rendering="crispEdges"
    >
      <rect class="qr-ground" width={code.size} height={code.size} />
      <path class="qr-ink" d={code.path} />
    </svg>
  );
}
