namespace CanvasCut.JobFiles;

/// <summary>The codes of what can be wrong with a job file; docs/problems.md explains each. A code never changes its meaning.</summary>
public static class ProblemCode
{
    /// <summary>The text is not TOML.</summary>
    public const string Syntax = "CC100";

    /// <summary>A field or table is written twice.</summary>
    public const string Twice = "CC101";

    /// <summary>There is no such field.</summary>
    public const string UnknownField = "CC102";

    /// <summary>A required field is missing.</summary>
    public const string Missing = "CC103";

    /// <summary>A field is left blank.</summary>
    public const string Blank = "CC104";

    /// <summary>A value is of another kind than its field.</summary>
    public const string WrongType = "CC105";

    /// <summary>A text is not a length.</summary>
    public const string NotLength = "CC106";

    /// <summary>A word is none of those that may stand there.</summary>
    public const string UnknownWord = "CC107";

    /// <summary>A text is not a mass, a speed or a percentage, or a number is not finite.</summary>
    public const string NotQuantity = "CC108";

    /// <summary>A value cannot be.</summary>
    public const string Impossible = "CC109";

    /// <summary>A value is outside what is usual in the trade.</summary>
    public const string Unusual = "CC110";

    /// <summary>A bow has one measure of its arc only.</summary>
    public const string BowMeasures = "CC111";

    /// <summary>The measures of a bow do not fit each other.</summary>
    public const string BowsDisagree = "CC112";

    /// <summary>A bow is out of order or off the top.</summary>
    public const string BowPlace = "CC113";

    /// <summary>A keep-out runs backward or lies wholly beside the top.</summary>
    public const string KeepOutPlace = "CC114";

    /// <summary>A bow's cloth is far from as wide as the top.</summary>
    public const string BowWidth = "CC132";

    /// <summary>The panel's length is shorter than its width.</summary>
    public const string PanelSides = "CC115";

    /// <summary>The dead borders leave no cells.</summary>
    public const string NoCells = "CC116";

    /// <summary>The panel's corner radius is more than half its width.</summary>
    public const string PanelCorner = "CC117";

    /// <summary>The junction box or the cable exit lies beside the panel or the carrier.</summary>
    public const string OffPanel = "CC118";

    /// <summary>The zipper cannot lie so far from the carrier's edge, or so near to it.</summary>
    public const string Reveal = "CC119";

    /// <summary>The setbacks leave no zipper.</summary>
    public const string Setback = "CC120";

    /// <summary>The zipper lengths on sale are none or not in order.</summary>
    public const string Stock = "CC121";

    /// <summary>A hem or its turn-under is too wide.</summary>
    public const string HemTooWide = "CC122";

    /// <summary>The carrier's middle does not lie on the top.</summary>
    public const string OffTop = "CC123";

    /// <summary>An edge is named twice.</summary>
    public const string Repeated = "CC124";

    /// <summary>The paper leaves too little to print on.</summary>
    public const string Paper = "CC125";

    /// <summary>The roll leaves too little cloth between its selvages.</summary>
    public const string Roll = "CC126";

    /// <summary>The file is of a form that this program does not read.</summary>
    public const string Format = "CC127";

    /// <summary>accept_unusual names a field that there is not.</summary>
    public const string UnknownAccepted = "CC128";

    /// <summary>A reading of the 100 mm square cannot be corrected, or one of the two is missing.</summary>
    public const string Reading = "CC129";

    /// <summary>A file that the job names cannot be read.</summary>
    public const string SideFile = "CC140";

    /// <summary>There is no such grade, or it is of another kind.</summary>
    public const string Grade = "CC141";

    /// <summary>A price, a date or a currency is none.</summary>
    public const string Price = "CC142";

    /// <summary>An item is priced twice.</summary>
    public const string PricedTwice = "CC143";

    /// <summary>An item is not sold by that unit.</summary>
    public const string PriceUnit = "CC144";

    /// <summary>The temperatures between which bonding is allowed contradict each other.</summary>
    public const string BondingLimits = "CC150";

    /// <summary>A bend limit in degrees cannot be, or is spread over more than the panel.</summary>
    public const string BendAngle = "CC160";

    /// <summary>A panel cannot hang over a table's edge so, or hangs too far to tell its stiffness.</summary>
    public const string Droop = "CC161";

    /// <summary>Fasteners cannot be set at such a pitch.</summary>
    public const string Pitch = "CC190";

    /// <summary>An edge leaves no room for a flap, or a flap none for what it carries.</summary>
    public const string FlapRoom = "CC191";

    /// <summary>A weather strip is wanted at an edge that nothing holds.</summary>
    public const string StripEdge = "CC192";

    /// <summary>A panel of a list has no name, or one that cannot be.</summary>
    public const string PanelName = "CC210";

    /// <summary>Two panels have one name.</summary>
    public const string PanelNamedTwice = "CC211";

    /// <summary>A twin mirrors nothing, itself, or another twin.</summary>
    public const string Mirror = "CC212";

    /// <summary>A twin says of its own what is settled by what it mirrors.</summary>
    public const string Settled = "CC213";

    /// <summary>What only panels of a list have stands in a job of one panel.</summary>
    public const string OneOnly = "CC215";

    /// <summary>The number of sets is none.</summary>
    public const string Copies = "CC216";

    /// <summary>A panel lies on the carrier of none, of itself, of a mirror image, or of one that lies on its own.</summary>
    public const string On = "CC217";

    /// <summary>Panels on one carrier are to lie in two directions.</summary>
    public const string Beside = "CC218";

    /// <summary>A row of panels is longer than the top.</summary>
    public const string RowLength = "CC219";

    /// <summary>The widths of the top are given twice, or one of them not at all.</summary>
    public const string TopWidths = "CC230";

    /// <summary>A station at which the top's width is given is out of order or off the top.</summary>
    public const string WidthPlace = "CC231";

    /// <summary>A corner of the top cannot be rounded or cut so.</summary>
    public const string TopCorner = "CC232";

    /// <summary>The edges of the top meet where they must not.</summary>
    public const string OutlineCrosses = "CC233";

    /// <summary>A tube has no ends, or one that does not lie on the top.</summary>
    public const string TubePlace = "CC234";

    /// <summary>What is on the top already has no shape, or lies beside the top.</summary>
    public const string FixturePlace = "CC235";

    /// <summary>The boom does not reach from its pivot aft, or never over the top.</summary>
    public const string BoomPlace = "CC236";

    /// <summary>The figures of a panel's label contradict each other.</summary>
    public const string Label = "CC260";

    /// <summary>A string or a controller is named that there is not, twice, or not at all.</summary>
    public const string Wiring = "CC261";

    /// <summary>A wire is no size of its family.</summary>
    public const string WireSize = "CC262";

    /// <summary>The voltages of a bank contradict each other.</summary>
    public const string Bank = "CC263";

    /// <summary>Hours of sun that cannot be, or of a kind that is not said.</summary>
    public const string SunHours = "CC264";

    /// <summary>A load has no energy, or two, or a charge without a bank.</summary>
    public const string Load = "CC265";

    /// <summary>A measures file has too few bows, or too many.</summary>
    public const string BowCount = "CC130";

    /// <summary>A measure that begins at the bow before stands at the first bow.</summary>
    public const string FirstBow = "CC131";
}
