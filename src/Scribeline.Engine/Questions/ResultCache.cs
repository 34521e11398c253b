namespace Scribeline.Engine.Questions;

/// <summary>
/// Long results kept by the value of their inputs, so that an edit recomputes only what it touches. Holds the most recently made results of
/// each kind; safe to use from several threads, where the same result may then be made twice.
/// </summary>
/// <param name="depth">Results kept of each kind, 1 or more.</param>
public sealed class ResultCache(int depth = 32)
{
    private readonly Lock gate = new();
    private readonly Dictionary<Type, LinkedList<(object Key, object Result)>> kept = [];

    /// <summary>Number of results made because none was kept, for those who watch what an edit costs.</summary>
    public int Made { get; private set; }

    /// <summary>The result for these inputs, made if it is not kept.</summary>
    /// <typeparam name="TKey">Inputs, compared by value.</typeparam>
    /// <typeparam name="TResult">Kind of result.</typeparam>
    /// <param name="key">The inputs.</param>
    /// <param name="make">Makes the result.</param>
    public TResult Get<TKey, TResult>(TKey key, Func<TKey, TResult> make)
        where TKey : notnull
        where TResult : notnull
    {
        lock (gate)
        {
            if (Find<TResult>(key) is { } found) return (TResult)found;
        }

        var made = make(key);
        lock (gate)
        {
            Made++;
            var list = Kind(typeof(TResult));
            list.AddFirst((key, made));
            if (list.Count > depth) list.RemoveLast();
        }

        return made;
    }

    private object? Find<TResult>(object key)
    {
        var list = Kind(typeof(TResult));
        for (var node = list.First; node is not null; node = node.Next)
        {
            if (!node.Value.Key.Equals(key)) continue;
            list.Remove(node);
            list.AddFirst(node);
            return node.Value.Result;
        }

        return null;
    }

    private LinkedList<(object Key, object Result)> Kind(Type kind)
    {
        if (!kept.TryGetValue(kind, out var list)) kept.Add(kind, list = new());
        return list;
    }
}
