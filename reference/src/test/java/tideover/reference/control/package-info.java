/** Control wiring and bus held against published frames and figures, and against small houses worked out by hand. */
@NullMarked
package tideover.reference.control;

import org.jspecify.annotations.NullMarked;
