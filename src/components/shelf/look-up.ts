/** What a record names, by its id: what went into a pot, a caution. An id that is nowhere stops the build. */
import { getCollection } from 'astro:content';

/** A mix may be made of another adhesive: PVA with a methylcellulose that was itself mixed first. */
export async function nameInPot(): Promise<(id: string) => string> {
  const pot = [...(await getCollection('ingredients')), ...(await getCollection('adhesives'))];
  return (id) => {
    const found = pot.find((entry) => entry.id === id);
    if (!found) throw new Error(`shelf: an adhesive is made of "${id}", which is on no shelf`);
    return found.data.name;
  };
}

export async function cautionTitle(): Promise<(id: string) => string> {
  const cautions = await getCollection('cautions');
  return (id) => {
    const found = cautions.find((entry) => entry.id === id);
    if (!found) throw new Error(`shelf: an adhesive asks for the caution "${id}", which is not in content/cautions`);
    return found.data.title;
  };
}
