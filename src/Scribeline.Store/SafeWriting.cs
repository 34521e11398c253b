using System.Text;

namespace Scribeline.Store;

/// <summary>Writes files so that a crash or a full disk leaves the old file or the new one, never half of one.</summary>
public static class SafeWriting
{
    /// <summary>Writes text as UTF-8: to a new file beside the old one, flushed to the disk, then renamed over it.</summary>
    /// <param name="path">The file; a link is followed to the file it leads to. A byte-order mark in the old file stays.</param>
    /// <param name="text">All of its text.</param>
    /// <exception cref="IOException">The disk is full or the folder cannot be written; the old file is untouched.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder or the file is protected; the old file is untouched.</exception>
    public static void Write(string path, string text)
    {
        byte[] content = Encoding.UTF8.GetBytes(text);
        Write(path, target => HasMark(target) ? [0xEF, 0xBB, 0xBF, .. content] : content);
    }

    /// <summary>Writes bytes the same way.</summary>
    /// <param name="path">The file; a link is followed to the file it leads to.</param>
    /// <param name="content">All of it.</param>
    /// <exception cref="IOException">The disk is full or the folder cannot be written; the old file is untouched.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder or the file is protected; the old file is untouched.</exception>
    public static void Write(string path, byte[] content) => Write(path, _ => content);

    private static void Write(string path, Func<string, byte[]> content)
    {
        var target = (File.Exists(path) ? File.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName : null) ?? Path.GetFullPath(path);
        var beside = Path.Combine(Path.GetDirectoryName(target)!, $".{Path.GetFileName(target)}.{Guid.NewGuid():N}.new");
        try
        {
            using (var stream = new FileStream(beside, FileMode.CreateNew, FileAccess.Write, FileShare.None))
            {
                stream.Write(content(target));
                stream.Flush(flushToDisk: true);
            }

            if (!OperatingSystem.IsWindows() && File.Exists(target)) File.SetUnixFileMode(beside, File.GetUnixFileMode(target));
            File.Move(beside, target, overwrite: true);
        }
        catch
        {
            File.Delete(beside);
            throw;
        }
    }

    private static bool HasMark(string path)
    {
        if (!File.Exists(path)) return false;
        using var old = File.OpenRead(path);
        Span<byte> first = stackalloc byte[3];
        return old.ReadAtLeast(first, 3, throwOnEndOfStream: false) == 3 && first is [0xEF, 0xBB, 0xBF];
    }
}
