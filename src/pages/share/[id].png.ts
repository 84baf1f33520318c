/** The pictures that links are shown with: one for each lesson and each answer, and one for every other page. */
import type { APIRoute } from 'astro';
import { getCollection } from 'astro:content';
import { askedPairs } from '../../components/choose/answer-pairs';
import { swatchSvg, type Looks } from '../../components/draw/swatch';
import { lessonsInOrder } from '../../components/lessons';
import { sharePng, swatchPng, type ShareWords } from '../../components/share/picture';
import { answerSentence, VERDICT_WORDS } from '../../core/choose/answer-words';
import { memoize } from '../../core/base/memoize';
import { catalogue } from '../../data/catalogue';

interface Props {
  words: Omit<ShareWords, 'swatch'>;
  paper?: { id: string; looks: Looks };
}
const swatchOf = memoize((id: string, looks: Looks) => swatchPng(swatchSvg(id, looks)));

export async function getStaticPaths() {
  const lessons = await lessonsInOrder();
  const looks = new Map((await getCollection('papers')).map(({ id, data }) => [id, data.looks]));
  const answers = askedPairs().map((answer) => {
    const best = answer.choices[0]!;
    return {
      params: { id: answer.id },
      props: {
        words: {
          title: answer.title,
          label: 'Which adhesive?',
          sentence: `${VERDICT_WORDS[best.verdict]}. ${answerSentence(best, catalogue)}`,
        },
        paper: { id: answer.paper, looks: looks.get(answer.paper)! },
      } satisfies Props,
    };
  });
  return [
    {
      params: { id: 'index' },
      props: {
        words: { title: 'Which glue, for this paper, on this board', label: 'Lessons and calculators' },
      } satisfies Props,
    },
    ...lessons.map(({ id, data }, place) => ({
      params: { id },
      props: { words: { title: data.title, label: `Lesson ${place + 1}` } } satisfies Props,
    })),
    ...answers,
  ];
}

export const GET: APIRoute = async ({ props }) => {
  const { words, paper } = props as Props;
  const swatch = paper && (await swatchOf(paper.id, paper.looks));
  return new Response(new Uint8Array(await sharePng({ ...words, ...(swatch && { swatch }) })), {
    headers: { 'Content-Type': 'image/png' },
  });
};
