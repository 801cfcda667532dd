/**
 * Bytes to a tree of nodes that know where they stand: UTF-8, then YAML 1.2 (JSON is read as the YAML it is).
 *
 * <p>Nothing here knows what a site is. The tree is built from the parser's events, without recursion, so that depth,
 * number of values and aliases are bounded while reading and a hostile file costs neither stack nor memory.
 *
 * <p>Sources: YAML Ain't Markup Language, version 1.2.2 (core schema); RFC 8259 for JSON; RFC 3629 for UTF-8.
 */
@NullMarked
package tideover.files.yaml;

import org.jspecify.annotations.NullMarked;
