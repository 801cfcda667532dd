/**
 * Numbers and structures as text: shortest numbers, JSON, YAML. Nothing here knows what a site is.
 *
 * <p>Sources: RFC 8259 (JSON); RFC 8785, 3.2.2.3 (how a number is written); YAML 1.2.2, 10.3.2 (what a number is).
 */
@NullMarked
package tideover.files.text;

import org.jspecify.annotations.NullMarked;
