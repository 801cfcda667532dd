/**
 * What is demanded and what came of it: rule books with their limits, the form of a check, and findings.
 *
 * <p>A {@link tideover.engine.rules.RuleBook} is country over IEC, operator over country, user over all; every
 * {@link tideover.engine.rules.Limit} names clause, source and how far it was verified. A topic a rule book does not
 * cover has no limits, and checks that need them stay OPEN. A {@link tideover.engine.rules.Check} judges what the
 * studies computed and yields {@link tideover.engine.rules.Finding}s without wording: a
 * {@link tideover.engine.rules.Phrase} is a key with typed arguments.
 */
@NullMarked
package tideover.engine.rules;

import org.jspecify.annotations.NullMarked;
