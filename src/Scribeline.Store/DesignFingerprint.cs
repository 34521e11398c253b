using System.Security.Cryptography;
using System.Text;
using Scribeline.Store.Logbooks;

namespace Scribeline.Store;

/// <summary>
/// Tells one state of a design from any other on paper: the first twelve digits of the SHA-256 of its file and of the files it names, one after
/// the other as read, and of the measured values and shots that its logbook adds.
/// </summary>
public static class DesignFingerprint
{
    private const int Digits = 12;

    /// <summary>The fingerprint of files as they are on disk.</summary>
    /// <param name="files">The design file first, see <see cref="DesignReading.Files"/>.</param>
    /// <param name="measured">Values of the logbook that count in the answers; null for none.</param>
    /// <param name="shots">Shots of the logbook; those taken out are left out. Null for none.</param>
    /// <exception cref="IOException">A file is no longer there.</exception>
    /// <exception cref="UnauthorizedAccessException">A file may no longer be read.</exception>
    public static string Of(IEnumerable<string> files, IEnumerable<MeasuredValue>? measured = null, IEnumerable<LoggedShot>? shots = null)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var file in files) hash.AppendData(File.ReadAllBytes(file));
        foreach (var value in measured ?? []) hash.AppendData(Encoding.UTF8.GetBytes($"{value.What} = {value.Value}\n"));
        foreach (var shot in shots ?? [])
        {
            if (!shot.Out) hash.AppendData(Encoding.UTF8.GetBytes($"{shot.Body}\n"));
        }

        return Convert.ToHexStringLower(hash.GetCurrentHash())[..Digits];
    }
}
