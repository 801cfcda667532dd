package tideover.command.keeping;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tideover.command.Desk;
import tideover.command.Status;
import tideover.command.kept.Keeping;
import tideover.store.customer.Customer;
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
        Customer customer = MeantCustomer.require(named, keeping.customers(), desk);
        keeping.customers().forget(customer, keepAttachments ? PersonalAttachments.KEEP : PersonalAttachments.ERASE);
        desk.out().println(desk.sentence("keeping.forgotten", customer.id().text()));
        return Status.DONE;
    }
}
