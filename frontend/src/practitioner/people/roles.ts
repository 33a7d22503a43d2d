import type { Role } from '../api/account';
import { t } from '../words';

const ROLES = ['owner', 'practitioner', 'read_only'] as const satisfies readonly Role[];

export const roleOptions = () => ROLES.map((value) => ({ value, label: t(`role_${value}`) }));
