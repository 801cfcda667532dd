package tideover.web.wiring;

import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import tideover.engine.assessment.FindingChange;
import tideover.engine.installation.Installation;
import tideover.engine.rules.RuleBook;
import tideover.engine.site.Site;
import tideover.engine.wiring.schedule.CuttingList;
import tideover.engine.wiring.schedule.WiringTables;
import tideover.files.tables.TableFiles;
import tideover.papers.Wording;
import tideover.papers.terminals.TerminalDrawing;
import tideover.papers.wiring.WiringData;
import tideover.papers.wiring.WiringPart;
import tideover.web.work.Stamps;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** What wiring lists and terminal drawings are made from. */
@Component
public final class WiringSources {
    private final Works works;
    private final Stamps stamps;
    private final WiringTables tables = TableFiles.wiring();

    WiringSources(Works works, Stamps stamps) {
        this.works = works;
        this.stamps = stamps;
    }

    /** The part of this name. */
    static Optional<WiringPart> find(String name) {
        return WiringPart.ALL.stream().filter(part -> part.name().equals(name)).findFirst();
    }

    /**
     * The wiring of a site, resolved anew so that it may be worked out on a thread of its own. Where something was built
     * otherwise than planned, it is judged both ways.
     */
    public WiringData of(Work work, Wording words) {
        return of(work, words, CuttingList.USUAL_ALLOWANCE_M);
    }

    /**
     * The same.
     *
     * @param allowanceM what each piece of cable or wire is cut longer, both ends together [m]
     */
    WiringData of(Work work, Wording words, double allowanceM) {
        Site site = work.site();
        RuleBook rules = work.atOnce().rules();
        List<FindingChange> changes = site.built().isAsPlanned()
                ? List.of()
                : FindingChange.between(
                        works.assessor().assess(site.asPlanned(), rules),
                        works.assessor().assess(site, rules));
        return WiringData.of(Installation.of(site), tables, changes, words, allowanceM);
    }

    /** The terminal drawing of the same. */
    public TerminalDrawing terminals(Work work, WiringData wiring) {
        return TerminalDrawing.of(
                wiring.installation(),
                wiring.net(),
                wiring.schedules().power(),
                wiring.schedules().control(),
                wiring.wording(),
                stamps.of(work));
    }
}
