package tideover.web.diagnosis;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.papers.diagnosis.CallFact;
import tideover.papers.diagnosis.CallNode;
import tideover.papers.diagnosis.CallSheet;
import tideover.papers.diagnosis.CallSheet.Answer;
import tideover.papers.wiring.WiringModel;
import tideover.web.diagnosis.DiagnosisSheet.Answered;
import tideover.web.diagnosis.DiagnosisSheet.Call;
import tideover.web.diagnosis.DiagnosisSheet.Fact;
import tideover.web.diagram.StateLink;
import tideover.web.page.NotHere;
import tideover.web.work.Work;

/** The tree of one trouble, walked as far as answers are given. */
final class CallWalk {
    private final Work work;
    private final Names names;
    private final Asked asked;
    private final CallSheet sheet;

    CallWalk(Work work, WiringModel model, Names names, Asked asked) {
        this.work = work;
        this.names = names;
        this.asked = asked;
        this.sheet = new CallSheet(model);
    }

    Call of(CallNode root) {
        List<Answered> answered = new ArrayList<>();
        CallNode node = root;
        for (Answer answer : asked.answers()) {
            answered.add(new Answered(
                    names.call(sheet.text(node)), sheet.answer(answer), address(asked.withAnswers(answered.size()))));
            node = next(node, answer);
        }
        return new Call(
                sheet.title(asked.call()),
                address(asked.withCall("")),
                answered,
                names.call(sheet.text(node)),
                sheet.caution(node),
                facts(node),
                ways(node));
    }

    private static CallNode next(CallNode node, Answer answer) {
        CallNode next = answer == Answer.YES ? node.yes() : node.no();
        if (next == null) throw new NotHere("answer behind " + node.id());
        return next;
    }

    private String address(Asked then) {
        return DiagnosisSheets.address(work, then, "call");
    }

    private List<Fact> facts(CallNode node) {
        List<Fact> facts = new ArrayList<>();
        for (CallFact fact : node.facts()) {
            List<String> lines = sheet.facts(fact);
            if (!lines.isEmpty())
                facts.add(new Fact(
                        sheet.name(fact),
                        lines.stream().map(line -> names.fact(fact, line)).toList()));
        }
        return facts;
    }

    private List<StateLink> ways(CallNode node) {
        List<StateLink> ways = new ArrayList<>();
        add(ways, Answer.YES, node.yes());
        add(ways, Answer.NO, node.no());
        return ways;
    }

    private void add(List<StateLink> ways, Answer answer, @Nullable CallNode next) {
        if (next != null) ways.add(new StateLink(sheet.answer(answer), address(asked.with(answer)), ""));
    }
}
