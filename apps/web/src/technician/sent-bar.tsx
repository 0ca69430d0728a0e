import { Link } from '@tanstack/react-router';
import { useAway } from '../data/connection.js';
import { useOutbox } from '../offline/outbox.js';
import { useWords } from '../words/words.js';
import style from './technician.module.css';

/** Always in sight: what is kept here, what is sent. It leads to the list. */
export function SentBar() {
  const { t } = useWords();
  const { waiting, sent, refused } = useOutbox();
  const away = useAway();
  return (
    <Link to="/unsent" className={style.bar} data-refused={refused > 0}>
      <span role="status">
        {refused > 0
          ? t('sent.refused', { refused, waiting })
          : waiting > 0
            ? t('sent.waiting', { waiting, sent })
            : t('sent.all', { sent })}
      </span>
      <span className="pencil small">{t(away ? 'sent.away' : 'sent.list')}</span>
    </Link>
  );
}
