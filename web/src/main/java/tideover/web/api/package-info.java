/**
 * The workbench for other programs: JSON over HTTP, on the same edit path as the pages. Described in docs/api.md and, for
 * programs, in the OpenAPI description that is served beside it.
 */
@NullMarked
package tideover.web.api;

import org.jspecify.annotations.NullMarked;
