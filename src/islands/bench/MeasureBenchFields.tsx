/** The four things that are measured, each asked in the way in which it was done. */
import { useStore } from '@nanostores/preact';
import type { ComponentChildren } from 'preact';
import { grabsBy } from '../../core/bench/grabs-by';
import { EXAMPLE_BENCH, benchIsMeasured, isOneJar, UNMEASURED_BENCH, type BenchField } from '../../core/bench/plan';
import type { Catalogue } from '../../core/records/records';
import type { BenchStore } from '../../stores/bench/bench';
import { named } from '../parts/Field';
import { PaperPick } from '../parts/PaperPick';
import { PickOf, TextOf } from '../parts/PlanField';
import { SlipTimer } from '../parts/SlipTimer';
import { TimeADrop } from '../parts/TimeADrop';
import { StopClock } from '../parts/StopClock';
import { TextField } from '../parts/TextField';

interface BenchFieldsProps {
  readonly store: BenchStore;
  readonly prefix: string;
  /** page that the cards stand on, where it is not this one */
  readonly cardsAt?: string;
}

/** One card's fields, with the way to the card that shows how it is done. */
function Card({
  title,
  id,
  cardsAt = '',
  children,
}: {
  readonly title: string;
  readonly id: string;
  readonly cardsAt: string | undefined;
  readonly children: ComponentChildren;
}) {
  return (
    <fieldset class="choice-set">
      <legend>{title}</legend>
      <p class="field-hint no-print">
        <a href={`${cardsAt}#card-${id}`}>How it is done, with a picture</a>
      </p>
      {children}
    </fieldset>
  );
}

export function ExampleBenchButton({ store }: BenchFieldsProps) {
  const { plan } = useStore(store.$solved);
  const problems = useStore(store.$problems);
  const isEmpty = problems.length === 0 && !benchIsMeasured(plan);
  return (
    <p class="no-print">
      <button type="button" class="button-quiet" onClick={() => store.take(isEmpty ? EXAMPLE_BENCH : UNMEASURED_BENCH)}>
        {isEmpty ? 'Show an example' : 'Empty the form'}
      </button>
    </p>
  );
}

export function BenchNameField({ store, prefix }: BenchFieldsProps) {
  const { name } = useStore(store.$texts);
  const problems = useStore(store.$problems);
  return (
    <TextField
      id={`${prefix}name`}
      label={store.fields.name.label}
      most={40}
      value={name}
      error={problems.find(({ field }) => field === 'name')?.message}
      onText={(text) => store.set('name', text)}
    />
  );
}

export function OwnCoatFields(props: BenchFieldsProps) {
  const { store } = props;
  const { coatBy } = useStore(store.$texts);
  const { adhesives, techniques } = store.catalogue;
  const wet = named(new Map([...adhesives].filter(([, { form }]) => form === 'wet')));
  return (
    <Card title="1. My coat" id="coat" cardsAt={props.cardsAt}>
      <PickOf<BenchField>
        {...props}
        field="coatBy"
        options={[
          { value: 'none', text: 'not measured' },
          { value: 'weighed', text: 'I weigh a board before and after' },
          { value: 'spoon', text: 'I have no scales: I spread a spoonful' },
        ]}
      />
      {coatBy !== 'none' && <PickOf<BenchField> {...props} field="tool" options={named(techniques)} />}
      {coatBy === 'weighed' && (
        <>
          <TextOf<BenchField> {...props} field="before" unit="g" hint="One board or more, with a space between." />
          <TextOf<BenchField> {...props} field="after" unit="g" hint="In the same order." />
          <TextOf<BenchField> {...props} field="seconds" hint="Weigh at once. What has dried on the way is put back." />
          <StopClock
            words={['Last stroke done: start', 'The scale stands still: stop']}
            callsAt={60}
            onStop={(seconds) => store.set('seconds', seconds.toFixed(0))}
            said=", put into the field."
          />
          <TextOf<BenchField> {...props} field="step" hint="The smallest change it shows." />
        </>
      )}
      {coatBy === 'spoon' && (
        <>
          <TextOf<BenchField> {...props} field="millilitres" hint="A level teaspoon holds 5 ml." />
          <PickOf<BenchField> {...props} field="spread" options={wet} />
        </>
      )}
      {coatBy !== 'none' && (
        <div class="field-row">
          <TextOf<BenchField> {...props} field="wide" />
          <TextOf<BenchField> {...props} field="high" />
        </div>
      )}
    </Card>
  );
}

const jars = (catalogue: Catalogue) =>
  named(new Map([...catalogue.adhesives].filter(([id]) => isOneJar(id, catalogue))));

/** An hour: a thin smear of white glue is dry by then in an ordinary room, or nearly. Common practice, no source. */
const DRYING = { low: 3600, high: 3600 };

export function OwnSolidsFields(props: BenchFieldsProps) {
  const { store } = props;
  const { solidsBy } = useStore(store.$texts);
  return (
    <Card title="2. What is in my glue" id="solids" cardsAt={props.cardsAt}>
      <PickOf<BenchField>
        {...props}
        field="solidsBy"
        options={[
          { value: 'none', text: 'not measured' },
          { value: 'smear', text: 'I weigh a smear wet and dry' },
          { value: 'sheet', text: 'I have no scales: its data sheet says' },
        ]}
      />
      {solidsBy !== 'none' && <PickOf<BenchField> {...props} field="jar" options={jars(store.catalogue)} />}
      {solidsBy === 'smear' && (
        <>
          <div class="field-row">
            <TextOf<BenchField> {...props} field="dish" />
            <TextOf<BenchField> {...props} field="wet" />
            <TextOf<BenchField> {...props} field="dry" />
          </div>
          <SlipTimer
            {...DRYING}
            start="Start when the smear is spread"
            says={[
              (until) => `It is drying. Weigh it after ${until}.`,
              'Weigh it now, and again in half an hour. When both agree, it is dry.',
              'Weigh it now, and again in half an hour. When both agree, it is dry.',
            ]}
          />
          <TextOf<BenchField> {...props} field="smearStep" />
        </>
      )}
      {solidsBy === 'sheet' && (
        <TextOf<BenchField> {...props} field="percent" hint="Look for “solids” or “non-volatile content”." />
      )}
    </Card>
  );
}

export function OwnBoardFields(props: BenchFieldsProps) {
  const { store } = props;
  const { boardBy, grabBy } = useStore(store.$texts);
  const drinking = named(new Map([...store.catalogue.substrates].filter(([, { sorptivity }]) => sorptivity.low > 0)));
  return (
    <Card title="3. How my board drinks" id="board" cardsAt={props.cardsAt}>
      <PickOf<BenchField>
        {...props}
        field="boardBy"
        options={[
          { value: 'none', text: 'not measured' },
          { value: 'drop', text: 'I time a drop of water; no scales are needed' },
        ]}
      />
      {(boardBy !== 'none' || grabBy !== 'none') && <PickOf<BenchField> {...props} field="board" options={drinking} />}
      {boardBy === 'drop' && (
        <>
          <TextOf<BenchField>
            {...props}
            field="drops"
            unit="s"
            hint="Three drops on three places, with spaces between."
          />
          <TimeADrop onTimed={(seconds) => store.set('drops', `${store.$texts.get().drops} ${seconds}`.trim())} />
          <TextOf<BenchField>
            {...props}
            field="dropsPerMl"
            hint="Count them into a 1 ml spoon or syringe. Leave blank for 20."
          />
        </>
      )}
    </Card>
  );
}

export function OwnGrabFields(props: BenchFieldsProps) {
  const { store } = props;
  const { grabBy, coatBy } = useStore(store.$texts);
  const { adhesives, techniques } = store.catalogue;
  const alone = named(
    new Map(
      [...adhesives].filter(
        ([, adhesive]) => adhesive.form === 'wet' && grabsBy(adhesive, store.catalogue) !== undefined,
      ),
    ),
  );
  return (
    <Card title="4. How soon it grabs" id="grab" cardsAt={props.cardsAt}>
      <PickOf<BenchField>
        {...props}
        field="grabBy"
        options={[
          { value: 'none', text: 'not measured' },
          { value: 'strip', text: 'I push a strip until it stops; no scales are needed' },
        ]}
      />
      {grabBy === 'strip' && (
        <>
          <PickOf<BenchField> {...props} field="glue" options={alone} />
          {coatBy === 'none' && <PickOf<BenchField> {...props} field="tool" options={named(techniques)} />}
          <PaperPick store={store} prefix={props.prefix} field="paper" />
          <TextOf<BenchField> {...props} field="grabbed" unit="s" hint="One strip or more, with spaces between." />
          <StopClock
            words={['The strip is down: start', 'It no longer slides: stop']}
            callsAt={600}
            onStop={(seconds) => store.set('grabbed', `${store.$texts.get().grabbed} ${seconds.toFixed(0)}`.trim())}
            said=", added to the strips."
          />
          <TextOf<BenchField> {...props} field="every" />
        </>
      )}
    </Card>
  );
}
