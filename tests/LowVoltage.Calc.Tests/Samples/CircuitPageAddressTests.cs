using CircuitPage;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;

namespace LowVoltage.Calc.Tests.Samples;

/// <summary>The circuit in the address of the page: what is written reads back, and nothing of an address is silently left out.</summary>
public class CircuitPageAddressTests
{
    [Property(MaxTest = 300)]
    public Property Write_OfAnyFields_ReadsBackToTheSameFields() => Prop.ForAll(AnyState().ToArbitrary(), state =>
    {
        PageState back = Address.Read(Address.Write(state), out IReadOnlyList<string> remarks);
        Assert.Empty(remarks);
        Assert.Equal(state.Units, back.Units);
        Assert.Equal(state.Used.Select(field => field.Key), back.Used.Select(field => field.Key));
        Assert.All(state.Used, field => Assert.Equal(Shown(field, state), Shown(field, back)));
        Assert.Equal(Address.Write(state), Address.Write(back));
    });

    [Fact]
    public void Fields_AreEveryColumnOfTheSchedule()
    {
        Assert.Equal(CircuitSchedule.Column.All.Select(column => column.Name).Where(name => name != "note").Order(), Fields.All.Where(field => field.IsColumn).Select(field => field.Key).Order());
        Assert.Equal(Fields.All.Count, Fields.All.Select(field => field.AddressKey(PageUnits.Us)).Distinct().Count());
    }

    [Fact]
    public void Read_OfEveryExample_TakesAllOfIt()
    {
        Assert.All(Examples.All, example =>
        {
            PageState state = Address.Read(example.Address, out IReadOnlyList<string> remarks);
            Assert.Empty(remarks);
            Assert.StartsWith("Invented example: ", state.Text("circuit"), StringComparison.Ordinal);
            Assert.Equal(example.Address.Split('&').Order(), Uri.UnescapeDataString(Address.Write(state)).Split('&').Order());
        });
    }

    [Theory]
    [InlineData("feed_ft=3", "'feed_ft' is not a field of this page.")]
    [InlineData("units=us&feed_m=3", "'feed_m' is not a field of this page.")]
    [InlineData("units=si", "'si' is no system of units.")]
    [InlineData("supply=dynamo", "'dynamo' is not an entry of \"Kind of supply\".")]
    [InlineData("engine_space=maybe", "'maybe' is not an entry of \"Engine space\".")]
    [InlineData("feed_m=3&feed_m=4", "\"Length of the feed, one way\" is there twice; the first counts.")]
    [InlineData("supply=LiFePO4&cold_cranking_A=600", "\"Cold-cranking current\" has no use with this supply, load and return.")]
    [InlineData("nonsense", "'nonsense' is not a field of this page.")]
    public void Read_OfWhatItCannotUse_SaysSo(string address, string remark)
    {
        Address.Read(address, out IReadOnlyList<string> remarks);
        Assert.Equal([remark], remarks);
    }

    [Fact]
    public void Write_HasTheUnitInTheName()
    {
        PageState state = PageState.Empty.With("feed_m", "5.5").With("ambient_degC", "40");
        Assert.Contains("feed_m=5.5", Address.Write(state), StringComparison.Ordinal);
        Assert.Contains("ambient_degC=40", Address.Write(state), StringComparison.Ordinal);
        Assert.Contains("feed_ft=18.044619", Address.Write(state.In(PageUnits.Us)), StringComparison.Ordinal);
        Assert.Contains("ambient_degF=104", Address.Write(state.In(PageUnits.Us)), StringComparison.Ordinal);
    }

    [Fact]
    public void DocumentAddress_ReadsBack_AndIsRefusedWhereDamaged()
    {
        const string json = "{ \"lowvoltage_circuit\": 1, \"name\": \"Ω°²\" }";
        string address = DocumentAddress.Write(json)!;
        Assert.DoesNotContain(address, c => !char.IsAsciiLetterOrDigit(c) && c is not ('=' or '-' or '_'));
        Assert.Equal(json, DocumentAddress.Read(address));
        Assert.Null(DocumentAddress.Read("document=%%%"));
        Assert.Null(DocumentAddress.Read("document=AAAA"));
        Assert.Null(DocumentAddress.Read("feed_m=3"));
    }

    [Fact]
    public void DocumentAddress_OfWhatIsTooLongToSend_IsNone()
    {
        Random random = new(3);
        Assert.Null(DocumentAddress.Write(string.Concat(Enumerable.Range(0, 20_000).Select(_ => (char)random.Next('a', 'z')))));
    }

    private static string Shown(Field field, PageState state) => field.Kind == FieldKind.Choice ? state.Choice(field.Key) : state.Text(field.Key).Trim();

    private static Gen<PageState> AnyState() =>
        from units in Gen.Elements(PageUnits.Metric, PageUnits.Us)
        from texts in Gen.CollectToArray(Fields.All, TextOf)
        select new PageState(units, Fields.All.Select((field, i) => KeyValuePair.Create(field.Key, texts[i])).Where(pair => pair.Value.Length > 0));

    private static Gen<string> TextOf(Field field) => field.Kind switch
    {
        FieldKind.Choice => Gen.Elements(field.Choices.Select(choice => choice.Value).ToArray()),
        FieldKind.Tick => Gen.Elements("", "yes"),
        FieldKind.Text => Gen.Elements("", "plain", "a & b = c + d", "100 % #1", "Ärger, 电线", "<b>", "1.5; 2.5"),
        _ => Gen.Elements("", "3", "2.5", "2,5", "-4", "1e3", "3 m", "a&b"),
    };
}
