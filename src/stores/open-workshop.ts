/** The workshop sheet over this site's own records. */
import { catalogue } from '../data/catalogue';
import { createWorkshop, type WorkshopStore } from './workshop';

export const openWorkshop = (): WorkshopStore => createWorkshop(catalogue);
