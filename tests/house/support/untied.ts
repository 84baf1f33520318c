/** Sentences of a lesson that seem to say which adhesive suits what, and stand outside of any tie to the model. */

/** An adhesive, or a family of them. Film is left out where it is the sheet that keeps a coat off something. */
const ADHESIVE =
  /\b(?:PVA|EVA|vinyl glues?|pastes?|methylcellulose|jelly|gelatine|(?:hot|animal|fish|fast|slow|wet|thick|thin|watery|water-based) glues?|glue sticks?|(?:dry|double-sided) films?|dry ones|heat-set|(?:spray|contact) adhesives?|cellulose ethers?|the (?:equal )?mix|adhesives? (?:that|with|whose|for))\b/i;

/** That it is the one to take, or not. */
const SUITS =
  /\b(?:suits?|will do|do better|does better|(?:is|are) (?:best|better|out|too weak|too strong|a poor|an adhesive for)|ruled out|(?:come|comes) (?:first|forward)|(?:stands?|puts?) [^.]*\bfirst\b|ranks?|(?:good|right|wrong|best|weak|strong) (?:for|on|enough for)|works? (?:for|on|well)|holds? (?:less|best|better|well|too)|takes? (?:thin|thick|paste|PVA)|for (?:light|heavy|thin|soft|thick|smooth|large|small) |where water does|(?:^|[.:;,] )(?:use|choose|take|prefer) )/i;

/** The prose of a lesson without its ties, its tags and its head. */
const looseProse = (text: string): string =>
  text
    .replace(/^---[\s\S]*?\n---/, '')
    .replace(/^import .*$/gm, '')
    .replace(/\{\/\*[\s\S]*?\*\/\}/g, '')
    .replace(/^#.*$/gm, '. ')
    .replace(/^\s*(?:-|\d+\.) /gm, '. ')
    .replace(/<Suits[\s\S]*?<\/Suits>/g, ' ')
    .replace(/<Term word="([^"]*)">[\s\S]*?<\/Term>/g, '$1')
    .replace(/<Gloss word="[^"]*">([^<]*)<\/Gloss>/g, '$1')
    .replace(/<Gloss word="([^"]*)" ?\/>/g, '$1')
    .replace(/<(?:Choice says|Question\s+asks)="([^"]*)"[^>]*>/g, ' ')
    .replace(/<\/?[A-Za-z][^>]*>/g, ' ')
    .replace(/\{' '\}/g, ' ')
    .replace(/[*_`]/g, '')
    .replace(/\s+/g, ' ');

/** Of a question only the reasons are read: what a choice says may be wrong, and its reason says so. */
export const untiedIn = (text: string): string[] =>
  looseProse(text)
    .split(/(?<=[.?!])\s+(?=[A-Z“(-])/)
    .map((sentence) => sentence.trim())
    .filter((sentence) => ADHESIVE.test(sentence) && SUITS.test(sentence));
