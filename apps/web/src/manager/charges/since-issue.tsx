import { useQuery } from '@tanstack/react-query';
import { useWords } from '../../words/words.js';
import { LeaveAsItIs } from './leave-as-it-is.js';
import { SinceLines, sinceQuery } from './since-lines.js';

/** What came to light, or was taken back, since a document was issued: somebody drafts it anew, or leaves it as it is. */
export function SinceIssue({ id }: { readonly id: string }) {
  const { t, moment } = useWords();
  const since = useQuery(sinceQuery(id)).data;
  if (since === undefined || since.missing.length + since.surplus.length === 0) return null;
  const { left } = since;
  return (
    <div className={`note stack${left === null ? ' straw' : ''}`} role="status">
      <SinceLines id={id} />
      {left === null ? (
        <>
          <p>{t('charges.since-what')}</p>
          <LeaveAsItIs id={id} />
        </>
      ) : (
        <p>{t('charges.left', { name: left.by, when: moment(left.at), reason: left.reason })}</p>
      )}
    </div>
  );
}
