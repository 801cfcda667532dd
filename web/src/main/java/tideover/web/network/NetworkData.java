package tideover.web.network;

import java.util.List;
import org.springframework.stereotype.Component;
import tideover.engine.assessment.StatePicture;
import tideover.engine.assessment.Studies;
import tideover.engine.site.Fed;
import tideover.papers.Wording;
import tideover.papers.json.NetworkAnswer;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** What flows and what faults do, in all states and at all places, for other programs. */
@Component
public final class NetworkData {
    private final Works works;

    NetworkData(Works works) {
        this.works = works;
    }

    /** Studied anew, so that it may be worked out on a thread of its own. */
    public NetworkAnswer of(Work work, Wording words) {
        Studies studies = works.assessor().studies(work.site(), work.atOnce().rules());
        List<Fed> places = studies.installation().all(Fed.class);
        List<StatePicture> pictures = studies.installation().states().stream()
                .map(state -> StatePicture.of(studies, state, places, 0))
                .toList();
        return new NetworkAnswer(
                words.with(studies.installation()),
                work.revision().digest(),
                work.atOnce().rules(),
                studies,
                pictures,
                places,
                0);
    }
}
