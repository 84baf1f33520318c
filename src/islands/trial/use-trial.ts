/** Which trial an address names, once the page is awake. */
import { useEffect, useState } from 'preact/hooks';

/** undefined until the page is awake; '' when the address names none. */
export function useTrialId(): string | undefined {
  const [id, setId] = useState<string | undefined>(undefined);
  useEffect(() => setId(new URLSearchParams(window.location.search).get('trial') ?? ''), []);
  return id;
}
