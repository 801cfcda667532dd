package tideover.engine.network.flow;

/**
 * A sinusoidal quantity as a complex number, r.m.s., or a complex impedance; the unit stands in the name of the variable
 * that holds it.
 *
 * @param real      part in phase with the reference
 * @param imaginary part that leads it by 90°
 */
public record Phasor(double real, double imaginary) {

    public static final Phasor ZERO = new Phasor(0, 0);

    /** A real number. */
    public static Phasor of(double real) {
        return new Phasor(real, 0);
    }

    /**
     * By magnitude and angle.
     *
     * @param angleDeg counter-clockwise [°]
     */
    public static Phasor polar(double magnitude, double angleDeg) {
        double angleRad = Math.toRadians(angleDeg);
        return new Phasor(magnitude * Math.cos(angleRad), magnitude * Math.sin(angleRad));
    }

    /** The r.m.s. value of a quantity, the absolute value of an impedance. */
    public double magnitude() {
        // Nothing electrical comes near where squares overflow, which hypot guards against at ten times the cost.
        return Math.sqrt(real * real + imaginary * imaginary);
    }

    /** Angle against the reference [°], above -180 to 180; 0 of zero. */
    public double angleDeg() {
        return Math.toDegrees(Math.atan2(imaginary, real));
    }

    public Phasor plus(Phasor other) {
        return new Phasor(real + other.real, imaginary + other.imaginary);
    }

    public Phasor minus(Phasor other) {
        return new Phasor(real - other.real, imaginary - other.imaginary);
    }

    public Phasor times(double factor) {
        return new Phasor(real * factor, imaginary * factor);
    }

    public Phasor times(Phasor other) {
        return new Phasor(
                real * other.real - imaginary * other.imaginary, real * other.imaginary + imaginary * other.real);
    }

    /**
     * This divided by another.
     *
     * @throws ArithmeticException if the other is zero
     */
    public Phasor over(Phasor other) {
        double square = other.real * other.real + other.imaginary * other.imaginary;
        if (square == 0) throw new ArithmeticException("division of %s by zero".formatted(this));
        return new Phasor(
                (real * other.real + imaginary * other.imaginary) / square,
                (imaginary * other.real - real * other.imaginary) / square);
    }

    public Phasor conjugate() {
        return new Phasor(real, -imaginary);
    }

    boolean isZero() {
        return real == 0 && imaginary == 0;
    }

    boolean isFinite() {
        return Double.isFinite(real) && Double.isFinite(imaginary);
    }
}
