package tideover.web.facts;

import java.util.List;
import tideover.web.edit.Outcome;
import tideover.web.facts.FactRow.Choice;
import tideover.web.page.Frame;

/**
 * One fact of the survey after it was saved, or was not.
 *
 * @param address of the site
 * @param base    number of the revision
 */
public record SurveyAnswer(
        Frame frame, String address, long base, Survey.Item item, List<Choice> origins, Outcome last) {
    public SurveyAnswer {
        origins = List.copyOf(origins);
    }
}
