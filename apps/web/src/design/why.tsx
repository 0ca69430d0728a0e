import type { ReactNode } from 'react';
import { Button, Dialog, DialogTrigger, Heading, Popover } from 'react-aria-components';
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
  return (
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
  );
}
