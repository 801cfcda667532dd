package tideover.web.findings;

import tideover.web.note.Margin;
import tideover.web.page.Frame;

/** The margin with all findings, and the way of stops, on which more may be open now. */
public record MarginAnswer(Frame frame, Margin margin) {}
