/**
 * The workbench: one person on one machine, in the browser. Pages are HTML first and work without script; every change
 * goes through one edit path, every route past one guard.
 */
@NullMarked
package tideover.web;

import org.jspecify.annotations.NullMarked;
