/**
 * Photos and documents at a place of a site. What came from outside is handed out as a download, or as a picture in a page of
 * ours; it is never a page itself.
 */
@NullMarked
package tideover.web.attachments;

import org.jspecify.annotations.NullMarked;
