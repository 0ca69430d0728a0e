import { useMutation, useQueryClient } from '@tanstack/react-query';
import { api } from '../../data/api.js';
import type { IntegrationKey } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { SureButton } from '../../design/sure-button.js';
import { useWords } from '../../words/words.js';

export function IntegrationKeyLine({ row }: { readonly row: IntegrationKey }) {
  const { t, moment, named } = useWords();
  const client = useQueryClient();
  const revoke = useMutation({
    mutationFn: () => api.remove(`/v1/integration-keys/${row.id}`),
    onSettled: () => client.invalidateQueries({ queryKey: ['integration-keys'] }),
  });
  return (
    <>
      <h3>
        {row.name} <span className="pencil figure">{row.prefix}…</span>
      </h3>
      <p>
        {row.scopes.map((scope) => named(`scope.${scope}`, scope)).join(', ')}{' '}
        <span className="pencil">
          {row.lastUsedAt ? t('connect.last-used', { when: moment(row.lastUsedAt) }) : t('connect.never-used')}{' '}
          {row.expiresAt ? t('connect.expires', { when: moment(row.expiresAt) }) : ''}
        </span>
      </p>
      <p>
        <SureButton
          label={t('connect.revoke', { name: row.name })}
          sureLabel={t('connect.revoke-sure', { name: row.name })}
          isPending={revoke.isPending}
          onSure={() => revoke.mutate()}
        />
      </p>
      <Failure error={revoke.error} />
    </>
  );
}
