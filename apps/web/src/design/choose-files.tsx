import style from './choose-files.module.css';

interface Props {
  readonly label: string;
  readonly accept: string;
  readonly multiple?: boolean;
  /** On a phone: the camera, not the files. */
  readonly camera?: boolean;
  readonly onChoose: (files: readonly File[]) => void;
}

/** A button that asks for files, in the reader's words: a browser's own speaks the browser's language. */
export function ChooseFiles({ label, accept, multiple = false, camera = false, onChoose }: Props) {
  return (
    <label className={`press-quiet ${style.choose}`}>
      {label}
      <input
        type="file"
        accept={accept}
        multiple={multiple}
        {...(camera ? { capture: 'environment' } : {})}
        onChange={({ target }) => {
          onChoose([...(target.files ?? [])]);
          // The same file again is a change again.
          target.value = '';
        }}
      />
    </label>
  );
}
