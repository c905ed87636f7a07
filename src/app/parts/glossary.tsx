import { useState } from 'react';
import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { GLOSSARY } from '../../analyses/glossary.ts';
import { Button } from './controls.tsx';
import { WordSchema } from './word-schema.tsx';

/** What the words on the screens mean, one press away from every page. */
export function Glossary() {
  const [open, setOpen] = useState(false);
  return (
    <>
      <Button look="small" label="Words: what they mean" onPress={() => setOpen(true)}>
        Words
      </Button>
      <ModalOverlay className="dialog-ground" isDismissable isOpen={open} onOpenChange={setOpen}>
        <Modal className="dialog">
          <Dialog>
            {({ close }) => (
              <div className="stack">
                <div className="line">
                  <Heading slot="title">What the words mean</Heading>
                  <Button look="small" onPress={close}>
                    Close
                  </Button>
                </div>
                {GLOSSARY.map(({ title, words }) => (
                  <section key={title}>
                    <h3>{title}</h3>
                    <dl className="glossary">
                      {words.map(({ word, meaning, drawn }) => (
                        <div key={word}>
                          <dt>{word}</dt>
                          <dd>
                            {meaning}
                            {drawn === undefined ? null : <WordSchema of={drawn} word={word} />}
                          </dd>
                        </div>
                      ))}
                    </dl>
                  </section>
                ))}
              </div>
            )}
          </Dialog>
        </Modal>
      </ModalOverlay>
    </>
  );
}
