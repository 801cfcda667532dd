package tideover.web.diagnosis;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Component;
import tideover.papers.Wording;
import tideover.papers.diagnosis.CallSheet;
import tideover.papers.diagnosis.CallTrees;
import tideover.papers.wiring.WiringModel;
import tideover.web.diagram.StateLink;
import tideover.web.page.Frame;
import tideover.web.page.NotHere;
import tideover.web.page.Stop;
import tideover.web.work.Frames;
import tideover.web.work.Work;

/** Makes the sheet of a fault call. */
@Component
final class DiagnosisSheets {
    static final String PAGE = "/wiring/diagnosis";

    private final Frames frames;
    private final Models models;
    private final CallTrees trees = CallTrees.load();

    DiagnosisSheets(Frames frames, Models models) {
        this.frames = frames;
        this.models = models;
    }

    DiagnosisSheet of(Work work, Asked asked, HttpServletRequest request) {
        Wording words = frames.words(request).with(work.installation());
        Frame frame = frames.of(request, words, work, Stop.WIRING);
        return models.ask(work, words, model -> of(frame, work, asked, model));
    }

    private DiagnosisSheet of(Frame frame, Work work, Asked asked, WiringModel model) {
        if (model.house().findLeader().isEmpty())
            return new DiagnosisSheet(
                    frame,
                    work.address(),
                    frame.words().text("diagnosis.noLeader"),
                    List.of(),
                    null,
                    List.of(),
                    null,
                    null);
        Names names = new Names(work, model);
        SeenParts seen = new SeenParts(work, model, names, asked);
        return new DiagnosisSheet(
                frame,
                work.address(),
                "",
                asked.call().isEmpty() ? troubles(work, asked, model) : List.of(),
                asked.call().isEmpty() ? null : call(work, asked, model, names),
                seen.problems(),
                seen.found(),
                seen.choice());
    }

    static String address(Work work, Asked asked, String part) {
        return work.address() + PAGE + asked.query() + "#" + part;
    }

    private List<StateLink> troubles(Work work, Asked asked, WiringModel model) {
        CallSheet sheet = new CallSheet(model);
        List<StateLink> troubles = new ArrayList<>();
        for (String trouble : trees.troubles())
            troubles.add(new StateLink(sheet.title(trouble), address(work, asked.withCall(trouble), "call"), ""));
        return troubles;
    }

    private DiagnosisSheet.Call call(Work work, Asked asked, WiringModel model, Names names) {
        return trees.find(asked.call())
                .map(root -> new CallWalk(work, model, names, asked).of(root))
                .orElseThrow(() -> new NotHere("trouble " + asked.call()));
    }
}
