using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>How the rocket stands on its rail, see <see cref="LaunchRail"/>.</summary>
internal static class RailAttitude
{
    /// <summary>Body axes to east, north, up.</summary>
    /// <param name="elevation">rad.</param>
    /// <param name="azimuth">rad.</param>
    /// <param name="turn">Of the scribe line from the upper side, rad, clockwise looking forward.</param>
    public static Quaternion<Scalar> Of(double elevation, double azimuth, double turn)
    {
        (double se, double ce) = Math.SinCos(elevation);
        (double sa, double ca) = Math.SinCos(azimuth);
        Vector3<Scalar> x = new(ce * sa, ce * ca, se);
        Vector3<Scalar> below = new(se * sa, se * ca, -ce);
        Vector3<Scalar> side = Vector3<Scalar>.Cross(below, x);

        // The scribe line is at −z; turned clockwise, as seen from the tail, it moves towards +y.
        (double st, double ct) = Math.SinCos(turn);
        Vector3<Scalar> z = ct * below - (Scalar)st * side;
        return Quaternion<Scalar>.FromAxes(x, Vector3<Scalar>.Cross(z, x), z);
    }
}
