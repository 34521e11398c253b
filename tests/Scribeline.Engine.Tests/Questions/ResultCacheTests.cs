using Scribeline.Engine.Questions;

namespace Scribeline.Engine.Tests.Questions;

public class ResultCacheTests
{
    private sealed record Key(string Name, int Value);

    [Fact]
    public void Equal_inputs_are_computed_once()
    {
        var cache = new ResultCache();
        var first = cache.Get(new Key("a", 1), k => new int[k.Value]);
        var again = cache.Get(new Key("a", 1), k => new int[k.Value]);
        Assert.Same(first, again);
        Assert.Equal(1, cache.Made);
    }

    [Fact]
    public void Kinds_of_result_do_not_mix()
    {
        var cache = new ResultCache();
        cache.Get(new Key("a", 1), _ => "text");
        Assert.Equal([7], cache.Get(new Key("a", 1), _ => new[] { 7 }));
    }

    [Fact]
    public void The_least_recently_used_is_dropped_first()
    {
        var cache = new ResultCache(2);
        cache.Get(1, _ => new object());
        cache.Get(2, _ => new object());
        cache.Get(1, _ => new object());
        cache.Get(3, _ => new object());
        cache.Get(1, _ => new object());
        Assert.Equal(3, cache.Made);
        cache.Get(2, _ => new object());
        Assert.Equal(4, cache.Made);
    }
}
