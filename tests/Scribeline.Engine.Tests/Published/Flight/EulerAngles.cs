using Scribeline.Engine.Flight;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Tests.Published.Flight;

/// <summary>Roll, pitch and yaw of the 3-2-1 sequence, rad.</summary>
internal static class EulerAngles
{
    public static (double Roll, double Pitch, double Yaw) Of(Quaternion<Scalar> q)
    {
        Vector3<Scalar> x = q.ToFrame(new(1, 0, 0)), y = q.ToFrame(new(0, 1, 0)), z = q.ToFrame(new(0, 0, 1));
        return (Math.Atan2(y.Z, z.Z), Math.Asin(-x.Z), Math.Atan2(x.Y, x.X));
    }

    public static Quaternion<Scalar> Quaternion(double roll, double pitch, double yaw)
    {
        (double sr, double cr) = Math.SinCos(roll / 2);
        (double sp, double cp) = Math.SinCos(pitch / 2);
        (double sy, double cy) = Math.SinCos(yaw / 2);
        return new(
            cr * cp * cy + sr * sp * sy, sr * cp * cy - cr * sp * sy, cr * sp * cy + sr * cp * sy, cr * cp * sy - sr * sp * cy);
    }
}
