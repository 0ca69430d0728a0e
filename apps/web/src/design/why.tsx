import type { ReactNode } from 'react';
import { Button, Dialog, DialogTrigger, Heading, I18nProvider, Popover } from 'react-aria-components';
import { useWords } from '../words/words.js';
import style from './why.module.css';

interface Props {
  readonly label: ReactNode;
  readonly title: string;
  readonly children: ReactNode;
  readonly open?: boolean;
  readonly onOpen?: (open: boolean) => void;
  readonly className?: string;
}

/** A computed figure that opens its reason when it is pressed. */
export function Why({ label, title, children, open, onOpen, className }: Props) {
  const { locale } = useWords();
  return (
    // Its hidden buttons speak the language of the screens, not the browser's.
    <I18nProvider locale={locale}>
      <DialogTrigger {...(open === undefined ? {} : { isOpen: open })} {...(onOpen ? { onOpenChange: onOpen } : {})}>
        <Button className={`${style.figure} ${className ?? ''}`}>{label}</Button>
        <Popover className={style.slip!} offset={4}>
          <Dialog className={style.inside!}>
            <Heading slot="title" level={2}>
              {title}
            </Heading>
            <div className="stack">{children}</div>
          </Dialog>
        </Popover>
      </DialogTrigger>
    </I18nProvider>
  );
}
