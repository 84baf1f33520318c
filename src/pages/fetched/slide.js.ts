/** A script that lessons fetch when it is first used. */
import { answerWith } from '../../components/lesson/fetched-script';

export const GET = answerWith('src/components/lesson/slide.ts');
