import { useWords } from '../../words/words.js';
import { Group, Text } from './setting-fields.js';
import type { Buyer } from './terms-form.js';

interface Props {
  readonly value: Buyer;
  readonly onChange: (value: Buyer) => void;
}

/** Who pays, as it stands on the document. */
export function BuyerFields({ value, onChange }: Props) {
  const { t } = useWords();
  const { address } = value;
  const isCountry = /^[A-Z]{2}$/.test(address.country);
  return (
    <Group title={t('terms.buyer')}>
      {(['legalName', 'taxNumber'] as const).map((name) => (
        <Text
          key={name}
          word={`setting.${name}`}
          value={value[name]}
          onChange={(typed) => onChange({ ...value, [name]: typed })}
        />
      ))}
      {(['street', 'city', 'postalCode', 'subdivision'] as const).map((name) => (
        <Text
          key={name}
          word={`setting.${name}`}
          value={address[name]}
          onChange={(typed) => onChange({ ...value, address: { ...address, [name]: typed } })}
        />
      ))}
      <Text
        word="setting.country"
        value={address.country}
        fault={isCountry ? undefined : t('fault.country')}
        onChange={(typed) => onChange({ ...value, address: { ...address, country: typed.trim().toUpperCase() } })}
      />
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
