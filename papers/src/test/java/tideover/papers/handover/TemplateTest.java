package tideover.papers.handover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import tideover.engine.site.FactSource;
import tideover.engine.site.FieldWords;
import tideover.papers.Wording;

class TemplateTest {

    private static final Wording WORDING = Wording.of(Locale.ENGLISH, new FieldWords() {
        @Override
        public String words(String section, String field) {
            return field;
        }

        @Override
        public FactSource source(String section, String field) {
            return FactSource.LOOK;
        }
    });

    record House(String name, List<Board> boards, String note) {}

    record Board(String label, List<String> circuits) {}

    private static final House HOUSE = new House(
            "Amselweg <11>", List.of(new Board("UC1", List.of("Oven", "Hob & hood")), new Board("UC2", List.of())), "");

    private static String filled(String template) {
        return Template.of(template).fill(HOUSE, WORDING);
    }

    @Test
    void whatIsFilledInCannotBecomeMarkup() {
        assertThat(filled("<p title=\"{name}\">{name}</p>"))
                .isEqualTo("<p title=\"Amselweg &lt;11&gt;\">Amselweg &lt;11&gt;</p>");
        assertThat(Template.escaped("a\u0000b\u000bc\"&")).isEqualTo("a b c&quot;&amp;");
    }

    @Test
    void eachElementSeesWhatLiesAroundIt() {
        assertThat(filled("{each boards}[{label}{each circuits} {it} at {label} of {name}{end}]{end}"))
                .isEqualTo(
                        "[UC1 Oven at UC1 of Amselweg &lt;11&gt; Hob &amp; hood at UC1 of Amselweg &lt;11&gt;][UC2]");
    }

    @Test
    void whatIsNotThereIsLeftOut() {
        assertThat(filled("{if note}note{end}{if name}name{end}{each boards}{if circuits}*{end}{end}"))
                .isEqualTo("name*");
    }

    @Test
    void textsComeFromTheBundles() {
        assertThat(filled("{=handover.cautions}")).isEqualTo("Caution");
    }

    @Test
    void aTemplateThatNamesNothingKnownIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> filled("{street}"))
                .withMessageContaining("street");
        assertThatIllegalStateException()
                .isThrownBy(() -> Template.of("{if name}"))
                .withMessageContaining("name");
        assertThatIllegalStateException().isThrownBy(() -> Template.of("{end}"));
    }
}
