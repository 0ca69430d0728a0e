import { useWords } from '../../words/words.js';
import { PartyFields } from './party-fields.js';
import { Group, Text } from './setting-fields.js';
import type { Buyer } from './terms-form.js';

interface Props {
  readonly value: Buyer;
  readonly onChange: (value: Buyer) => void;
}

/** Who pays, as it stands on the document. */
export function BuyerFields({ value, onChange }: Props) {
  const { t } = useWords();
  return (
    <Group title={t('terms.buyer')}>
      <PartyFields value={value} onChange={(party) => onChange({ ...value, ...party })} />
      {(['purchaseOrder', 'exemptionCertificate'] as const).map((name) => (
        <Text
          key={name}
          word={`terms.${name}`}
          value={value[name]}
          onChange={(typed) => onChange({ ...value, [name]: typed })}
        />
      ))}
    </Group>
  );
}
