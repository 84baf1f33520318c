/** The chooser of its own page, over this site's own records. */
import { catalogue } from '../data/catalogue';
import { createChooserPage, type ChooserPageStore } from './chooser-page';

export const openChooserPage = (): ChooserPageStore => createChooserPage(catalogue);
