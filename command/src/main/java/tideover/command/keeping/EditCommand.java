package tideover.command.keeping;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tideover.command.Desk;
import tideover.command.kept.Keeping;
import tideover.command.kept.KeptVariant;

/** Changes facts of a kept site. */
@Command(name = "edit", resourceBundle = "tideover.command.help")
public final class EditCommand extends KeptCommand {
    @Parameters(index = "0", paramLabel = "SITE", arity = "1", descriptionKey = "keeping.site")
    private String site = "";

    @Parameters(index = "1..*", paramLabel = "PATH=VALUE", arity = "1..*", descriptionKey = "keeping.edits")
    private List<String> edits = new ArrayList<>();

    @Option(names = "--plan", descriptionKey = "keeping.plan")
    private boolean plan;

    @Option(names = "--note", paramLabel = "TEXT", descriptionKey = "keeping.note")
    private String note = "";

    public EditCommand(Desk desk) {
        super(desk);
    }

    @Override
    int work(Keeping keeping) {
        KeptVariant variant = require(keeping, site);
        TypedEdits typed = new TypedEdits(desk, keeping.site(variant, variant.revision()));
        for (String edit : edits) {
            int sign = edit.indexOf('=');
            if (sign < 1) typed.refuse(desk.sentence("keeping.edit", edit));
            else typed.add((plan ? "plan." : "") + edit.substring(0, sign), edit.substring(sign + 1));
        }
        return tell(keeping.change(variant, typed.edits(), note));
    }
}
