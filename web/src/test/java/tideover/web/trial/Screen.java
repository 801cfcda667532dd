package tideover.web.trial;

/** The screens that pages are made for. */
public enum Screen {
    PHONE(390, 844),
    TABLET(820, 1180),
    DESKTOP(1440, 900);

    final int width;
    final int height;

    Screen(int width, int height) {
        this.width = width;
        this.height = height;
    }
}
