package tideover.web.guard;

import java.util.ArrayDeque;
import java.util.Deque;

/** Tokens of start addresses: each opens the door once, and leads to the first page. */
public final class StartTokens {
    /** Older ones lapse: nobody uses the first of many. */
    private static final int MOST = 8;

    private final Deque<String> open = new ArrayDeque<>();
    private final String firstPage;

    /** @param firstPage path of ours that whoever comes in is shown */
    public StartTokens(String firstPage) {
        this.firstPage = firstPage;
    }

    /** A further token. */
    public synchronized String issue() {
        String token = Secret.random();
        open.addLast(token);
        while (open.size() > MOST) open.removeFirst();
        return token;
    }

    /** Where whoever came in is led; never told by the address, so that nobody else can say it. */
    String firstPage() {
        return firstPage;
    }

    /** Whether this token was open; it no longer is. */
    synchronized boolean use(String token) {
        return open.removeIf(known -> Secret.same(known, token));
    }
}
