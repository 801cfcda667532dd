package tideover.papers.diagnosis;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import tideover.papers.diagnosis.CallSheet.Answer;
import tideover.papers.wiring.ListingText;

/** A tree as indented text. */
public final class CallText {

    private static final String STEP = "    ";

    private final CallSheet sheet;
    private final StringBuilder text = new StringBuilder();
    private final Set<CallFact> told = EnumSet.noneOf(CallFact.class);

    private CallText(CallSheet sheet) {
        this.sheet = sheet;
    }

    /**
     * A tree as text, ending with a line break.
     *
     * @param answers answers already given: what they lead past is left out
     */
    public static String of(String trouble, CallNode root, List<Answer> answers, CallSheet sheet) {
        CallText call = new CallText(sheet);
        call.text.append(sheet.title(trouble)).append("\n\n");
        CallNode node = root;
        for (Answer answer : answers) {
            CallNode next = answer == Answer.YES ? node.yes() : node.no();
            if (next == null) break;
            call.lines("", sheet.text(node) + " " + sheet.answer(answer));
            node = next;
        }
        call.node("", "", node);
        return call.text.toString();
    }

    private void node(String indent, String lead, CallNode node) {
        lines(indent, lead + sheet.text(node));
        String deeper = lead.isEmpty() ? indent : indent + STEP;
        String caution = sheet.caution(node);
        if (!caution.isEmpty()) lines(deeper, "! " + caution);
        for (CallFact fact : node.facts()) {
            List<String> facts = sheet.facts(fact);
            if (facts.isEmpty()) continue;
            // A list that stands above already is not told again.
            if (!told.add(fact)) {
                lines(deeper, sheet.asAbove(fact));
                continue;
            }
            lines(deeper, sheet.name(fact));
            for (String each : facts) lines(deeper + "  ", "· " + each);
        }
        if (node.yes() != null) node(deeper, sheet.answer(Answer.YES) + ": ", node.yes());
        if (node.no() != null) node(deeper, sheet.answer(Answer.NO) + ": ", node.no());
    }

    private void lines(String indent, String sentence) {
        String hanging = sentence.startsWith("· ") || sentence.startsWith("! ") ? "  " : "";
        String lead = "";
        for (String line : ListingText.wrapped(sentence, ListingText.WIDTH - indent.length() - hanging.length())) {
            text.append(indent).append(lead).append(line).append('\n');
            lead = hanging;
        }
    }
}
