package tideover.web.sites;

import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.stereotype.Component;
import tideover.engine.assessment.Assessment;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Outcome;
import tideover.store.site.RevisionId;
import tideover.store.site.VariantRow;
import tideover.web.work.Works;

/** What came of judging each site, kept for lists: a site is judged once for each of its revisions. */
@Component
final class Verdicts {
    /** Some hundred bytes each. */
    private static final int KEPT = 4000;

    private final Works works;
    private final Map<RevisionId, Short> kept = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<RevisionId, Short> eldest) {
            return size() > KEPT;
        }
    };

    Verdicts(Works works) {
        this.works = works;
    }

    /**
     * A judgement in short.
     *
     * @param outcome    of the whole
     * @param notMet     binding findings that are not met
     * @param notCertain binding findings inside the uncertainty
     * @param open       binding findings that wait for something
     * @param advice     advice neither followed nor left with a reason
     */
    record Short(Outcome outcome, int notMet, int notCertain, int open, int advice) {}

    /** Of what is judged at once; slow findings are not waited for. */
    Short of(VariantRow variant) {
        RevisionId head = variant.headId();
        synchronized (kept) {
            Short known = kept.get(head);
            if (known != null) return known;
        }
        Short verdict = of(works.open(variant.id().text()).atOnce());
        synchronized (kept) {
            kept.put(head, verdict);
        }
        return verdict;
    }

    private static Short of(Assessment assessment) {
        int notMet = 0;
        int notCertain = 0;
        int open = 0;
        for (Finding finding : assessment.findings()) {
            if (!finding.isBlocking()) continue;
            switch (finding.outcome()) {
                case NOT_MET -> notMet++;
                case NOT_CERTAIN -> notCertain++;
                case OPEN -> open++;
                case MET, NOT_APPLICABLE -> {}
            }
        }
        return new Short(
                assessment.verdict().outcome(),
                notMet,
                notCertain,
                open,
                assessment.verdict().advice());
    }
}
