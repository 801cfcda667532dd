/**
 * Photos and documents at a place of a site: told apart by their content, cleaned of where and by whom they were taken,
 * and kept once under the digest of what is left.
 *
 * <p>Pictures lose what is not picture without being coded anew. Sources: ITU-T T.81 (1992), Annex B, and JFIF 1.02 for
 * JPEG; W3C Portable Network Graphics, third edition (2025), clauses 5 and 11, for PNG; RFC 9649 for WebP; Exif 2.32 (CIPA
 * DC-008), 4.6, for the orientation. No formulas of the trade.
 */
@NullMarked
package tideover.store.attachment;

import org.jspecify.annotations.NullMarked;
