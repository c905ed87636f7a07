import { similarityOptions } from '../../../analyses/similarity/options.ts';
import { COEFFICIENTS, LEVELS_OF_KINDS } from '../../parts/asking/attribute-options.ts';
import { Choice } from '../../parts/controls.tsx';
import { NewSite, type TypedSite } from './new-site.tsx';
import type { Asked, View } from './use-asked.ts';

export const VIEWS: readonly { readonly id: View; readonly label: string }[] = [
  { id: 'counts', label: 'What there is' },
  { id: 'alike', label: 'How alike they are' },
  { id: 'time', label: 'When they date to' },
  { id: 'recorded', label: 'What is recorded where' },
];

const MIXTURES = [
  { id: 'whole', label: 'as kinds of their own' },
  { id: 'each', label: 'in each of their kinds' },
];

interface AskFormProps {
  readonly asked: Asked;
  readonly shown: View;
  readonly onShow: (view: View) => void;
}

/** What to set side by side. */
export function AskForm({ asked, shown, onShow }: AskFormProps) {
  const { attributes, groups, kinds, places, of, level, mixtures, mixed, alike, set } = asked;
  return (
    <div className="stack">
      <Choice label="Show" options={VIEWS} value={shown} onChange={(id) => onShow(id as View)} />
      <Choice
        label="Places"
        options={groups}
        value={places}
        onChange={(id) => set({ places: id }, 'other places')}
      />
      {shown === 'recorded' || shown === 'time' ? null : (
        <Choice
          label="in their"
          options={kinds.filter(({ id }) => id !== places)}
          value={of}
          onChange={(id) => set({ of: id }, 'other kinds')}
        />
      )}
      {shown === 'recorded' || shown === 'time' || typeof level !== 'string' ? null : (
        <Choice
          label="counted"
          options={LEVELS_OF_KINDS}
          value={level}
          onChange={(id) => set({ level: id }, 'another level of kinds')}
        />
      )}
      {shown === 'recorded' || shown === 'time' || !mixed ? null : (
        <Choice
          label="mixtures"
          options={MIXTURES}
          value={mixtures}
          onChange={(id) => set({ mixtures: id }, 'mixtures counted otherwise')}
        />
      )}
      {shown !== 'alike' ? null : (
        <Choice
          label="Likeness by"
          options={COEFFICIENTS}
          value={similarityOptions.shape.coefficient.parse(alike.coefficient)}
          onChange={(id) => set({ coefficient: id }, 'another coefficient')}
        />
      )}
      {shown !== 'alike' ? null : (
        <NewSite
          key={of}
          kinds={attributes.find(({ definition }) => definition.id === of)}
          sites={(alike.newSites as readonly TypedSite[] | undefined) ?? []}
          onSet={(newSites, what) => set({ newSites }, what)}
        />
      )}
    </div>
  );
}
