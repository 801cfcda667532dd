package tideover.command.keeping;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tideover.command.Desk;
import tideover.command.Refusal;
import tideover.command.Status;
import tideover.command.kept.Keeping;
import tideover.command.kept.KeptCustomer;
import tideover.store.customer.Customers.PersonalAttachments;

/** Erases everything known of a customer. */
@Command(name = "forget", resourceBundle = "tideover.command.help")
public final class ForgetCommand extends KeptCommand {
    @Parameters(paramLabel = "CUSTOMER", arity = "1", descriptionKey = "keeping.customer")
    private String named = "";

    @Option(names = "--keep-attachments", descriptionKey = "keeping.keepAttachments")
    private boolean keepAttachments;

    public ForgetCommand(Desk desk) {
        super(desk);
    }

    @Override
    int work(Keeping keeping) {
        KeptCustomer customer = requireCustomer(keeping);
        keeping.forget(customer, keepAttachments ? PersonalAttachments.KEEP : PersonalAttachments.ERASE);
        desk.out().println(desk.sentence("keeping.forgotten", customer.id()));
        return Status.DONE;
    }

    /** The one that is meant, by lasting name or whole name: nobody is forgotten for a part of a name. */
    private KeptCustomer requireCustomer(Keeping keeping) {
        List<KeptCustomer> all = keeping.customers("");
        List<KeptCustomer> meant = all.stream()
                .filter(customer ->
                        customer.id().equals(named) || customer.name().equalsIgnoreCase(named.strip()))
                .toList();
        if (meant.size() == 1) return meant.get(0);
        List<KeptCustomer> near = meant.isEmpty() ? keeping.customers(named) : meant;
        if (near.isEmpty()) throw new Refusal(List.of(desk.sentence("keeping.noCustomer", named)));
        StringBuilder lines = new StringBuilder(desk.sentence("keeping.whichCustomer", named));
        for (KeptCustomer customer : near)
            lines.append(System.lineSeparator())
                    .append(desk.sentence("keeping.customer", customer.id(), customer.name(), customer.town()));
        throw new Refusal(List.of(lines.toString()));
    }
}
