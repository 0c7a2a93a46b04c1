/**
 * What people choose first, and what stands nearest in this service. From memory of published lists of leaked passwords;
 * compact on purpose: `passwordFault` takes these away wherever they stand and looks at what is left.
 */
export const commonWords: readonly string[] = [
  ...["password", "passwort", "passwd", "pass", "word", "secret", "login", "signin", "welcome", "willkommen", "hello"],
  ...["admin", "administrator", "root", "user", "guest", "test", "default", "changeme", "change", "letmein", "access"],
  ...["master", "monkey", "dragon", "shadow", "sunshine", "princess", "football", "baseball", "superman", "batman"],
  ...[
    "iloveyou",
    "love",
    "lovely",
    "trustno",
    "trust",
    "whatever",
    "freedom",
    "michael",
    "jordan",
    "jennifer",
    "hunter",
  ],
  ...["charlie", "thomas", "ashley", "bailey", "jessica", "daniel", "george", "michelle", "pepper", "ginger", "summer"],
  ...["winter", "spring", "autumn", "january", "february", "march", "april", "june", "july", "august", "september"],
  ...["october", "november", "december", "monday", "tuesday", "friday", "sunday", "starwars", "pokemon", "computer"],
  ...["internet", "google", "facebook", "microsoft", "windows", "qwerty", "qwertz", "azerty", "asdf", "zxcv", "killer"],
  ...["soccer", "hockey", "mustang", "corvette", "ferrari", "mercedes", "cookie", "cheese", "banana", "chocolate"],
  ...["company", "office", "work", "please", "sesame", "open", "mypassword", "myword", "my", "new", "old", "the", "is"],
  ...[
    "cornerway",
    "corner",
    "container",
    "containers",
    "architect",
    "architecture",
    "engineer",
    "engineering",
    "owner",
  ],
  ...["checker", "reader", "builder", "building", "project", "scheme", "structure", "structural", "steel", "drawing"],
];
