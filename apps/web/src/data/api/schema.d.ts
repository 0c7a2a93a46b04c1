// Made from the API description by `npm run api:types`; a test holds it against the routes.
export interface paths {
  "/api/account": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** Your account */
    get: operations["readAccount"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/account/licence": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /**
     * State your licence as an engineer, or take the statement back
     * @description Shown as stated by you; the service verifies nothing.
     */
    post: operations["stateLicence"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/account/name": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /** Change your name */
    post: operations["changeName"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/account/notices": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** How you are told by letter */
    get: operations["readNoticeSetting"];
    put?: never;
    /** Be told by letter at once, once a day, or not at all */
    post: operations["setNotices"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/account/password": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /** Change your password; your other sessions end */
    post: operations["changePassword"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/account/sessions": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** Where you are signed in */
    get: operations["listSessions"];
    put?: never;
    post?: never;
    /** End all your sessions but this one */
    delete: operations["endOtherSessions"];
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/account/sessions/{sessionId}": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    post?: never;
    /** End one of your sessions */
    delete: operations["endSession"];
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/account/stamp-wording": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /**
     * State how your office words the four dispositions of a stamp
     * @description The meaning stays one of the four; a stamp keeps both.
     */
    post: operations["wordStamps"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/administration/projects": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** Every project of the service, for its administrators */
    get: operations["listKeptProjects"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/archives": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /**
     * Bring a project in from its archive
     * @description One part named `file` of multipart/form-data (RFC 7578). It is checked first and marked with who signed it; nothing of it is signed anew. `key` is the fingerprint its signer is known to have. Nobody has a part in it until they are asked in.
     */
    post: operations["bringInArchive"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/link": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** What the opened link is for */
    get: operations["readLink"];
    put?: never;
    /** Open a one-time link: its secret is taken for a cookie */
    post: operations["openLink"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/link/use": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /** Use the opened link: join, become the first administrator, or set a new password */
    post: operations["useLink"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/new-password": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /**
     * Have a link to set a new password sent to an address
     * @description The answer and its time are the same whether anyone has that address or not.
     */
    post: operations["askNewPassword"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/notices": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /**
     * What concerns you in your projects, newest first
     * @description Entries of the record by others for which your part has something to do or to know.
     */
    get: operations["listNotices"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/owed": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /**
     * Who owes whom what in your projects
     * @description Open questions, conditions and change requests; what is needed first comes first.
     */
    get: operations["listOwed"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** The projects you have a part in, by name */
    get: operations["listProjects"];
    put?: never;
    /** Start a project */
    post: operations["startProject"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** One project */
    get: operations["readProject"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/archive": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /**
     * The whole project as one archive
     * @description A ZIP with the record, every row and every file, signed as a whole. A later version reads it back; `npx cornerway verify` checks it without any service.
     */
    get: operations["takeArchive"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/authority": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** How the authority wants a set that comes again marked and answered */
    get: operations["readAuthority"];
    put?: never;
    /**
     * Lay down how the authority wants sets marked and comments answered
     * @description Sets printed from then on are marked so, and replies name what it asks. Each is kept in the record.
     */
    post: operations["describeAuthority"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/checks": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /**
     * Check the newest revision as a second engineer
     * @description Refused to whoever drew or judged in the project.
     */
    post: operations["checkRevision"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/conditions": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** The conditions of answers, stamps and checks, each as it stands now */
    get: operations["listConditions"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/conditions/{conditionId}/met": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /** Say how a condition is met */
    post: operations["meetCondition"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/conditions/{conditionId}/steps": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /**
     * Close a condition that is met, or open it again
     * @description Done by the role that raised it, never by whoever said that it is met.
     */
    post: operations["judgeCondition"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/confirmations": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /** Confirm values from memory against the published text */
    post: operations["confirmValues"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/cost-book": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /**
     * What the project pays for work and steel
     * @description Figures without a source are for show; so is every price made with them.
     */
    get: operations["readCostBook"];
    put?: never;
    /**
     * Change the cost book
     * @description Refused when it is no longer the one whose tag is in `If-Match`. Each book is kept in the record.
     */
    post: operations["changeCostBook"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/decisions": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /**
     * The owner's decisions, oldest first, each with what has changed since
     * @description The latest thousand; earlier ones are in the record.
     */
    get: operations["listDecisions"];
    put?: never;
    /**
     * Agree to the price of the latest revision or of a request on it, or decline it
     * @description Carries the digests on the owner's screen: of the content, of the cost book, and of the premium. A request taken in is decided on as well, also on a newer revision of the very content that was priced.
     */
    post: operations["decide"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/dispositions": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /** Put the engineer's own disposition on a mark, with a calculation */
    post: operations["disposeMark"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/draft": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** The draft as it is now */
    get: operations["readDraft"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/draft/acts": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /**
     * Draw: one act, whole or not at all
     * @description An act sent twice under one id is one act. It is re-based when nothing it touches changed since its base.
     */
    post: operations["draw"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/draft/acts/{actId}/undo": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /**
     * Take an act back by its id
     * @description The same as drawing its inverse with `undoes`, for acts of more operations than are taken at once.
     */
    post: operations["takeBack"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/draft/file": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** The draft as a file */
    get: operations["saveDraft"];
    put?: never;
    /** Make the draft what a file holds: one act, which can be taken back */
    post: operations["bringIn"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/files/{fileId}": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** A kept file, to save */
    get: operations["readFile"];
    put?: never;
    /**
     * Keep a PDF as it is, or a photo, under an id of the sender's
     * @description One part named `file` of multipart/form-data (RFC 7578), known by its content. A PDF is never touched; a JPEG or PNG is drawn anew, without its position or other metadata.
     */
    post: operations["keepFile"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/invitations": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /**
     * Ask someone in by a one-time link
     * @description The link goes to the address by letter and is told here once. It is good for seven days.
     */
    post: operations["invite"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/invitations/{invitationId}": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    post?: never;
    /** Take an invitation back */
    delete: operations["withdrawInvitation"];
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/leave": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /** Lay one's own part down */
    post: operations["leaveProject"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/live": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /**
     * Follow a project as it happens, by WebSocket
     * @description The first message is `resume` with the last number seen; what follows is in `cornerway.schema.json`.
     */
    get: operations["follow"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/members": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** Who has a part in a project, by name */
    get: operations["listMembers"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/notes": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** Notes in the order they were written */
    get: operations["listNotes"];
    put?: never;
    /** Write a note on an element */
    post: operations["writeNote"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/notes/{noteId}/settle": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /** Settle a note */
    post: operations["settleNote"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/notices/seen": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /** Say that you have seen a project's up to an entry */
    post: operations["seeNotices"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/option-sets": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /**
     * Alternatives side by side, each with its verdict, its premium and its steel
     * @description Premiums by the cost book as it is now. The last pick of a set counts.
     */
    get: operations["listOptionSets"];
    put?: never;
    /** Open a set of alternatives */
    post: operations["openOptionSet"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/option-sets/{setId}/options": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /**
     * Keep the draft as the next alternative of a set
     * @description At most six that are not withdrawn, and 24 in all; the engine's answer to each follows from the queue. What is kept never changes.
     */
    post: operations["keepOption"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/option-sets/{setId}/options/{optionId}": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** An alternative as it is drawn */
    get: operations["readOption"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/option-sets/{setId}/options/{optionId}/withdrawal": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /**
     * Take an alternative back
     * @description By whoever kept it, while it is not the one picked. It stays where it stands, and in the record.
     */
    post: operations["withdrawOption"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/option-sets/{setId}/picks": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /**
     * Say which alternative is to be built
     * @description The last word counts, and every one stays, as do the other alternatives. It draws nothing.
     */
    post: operations["pickOption"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/people": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** Who has a part in a project */
    get: operations["readPeople"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/people/{personId}/confirm": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /** Say who the engineer is */
    post: operations["confirmEngineer"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/people/{personId}/expiry": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /** Say when a reader's part ends */
    post: operations["setExpiry"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/people/{personId}/remove": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /** Take a part away */
    post: operations["removePart"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/plan-check": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** The comments of the authority with their replies, and how many stand how */
    get: operations["readRegister"];
    put?: never;
    /**
     * Bring in a sheet of comments of the authority, whole or not at all
     * @description CSV with a heading row that names a number and a comment, and perhaps a discipline and a sheet; or numbered lines.
     */
    post: operations["bringInComments"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/plan-check/{commentId}/steps": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /**
     * Assign, answer, close or open again a comment of the authority
     * @description Nobody closes what they answered themselves.
     */
    post: operations["followComment"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/plan-check/file": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /**
     * The register as a table
     * @description RFC 4180; text that a spreadsheet would take for a formula is led by an apostrophe.
     */
    get: operations["saveRegister"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/questions": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /**
     * The questions to the engineer, each as it stands now
     * @description Whether an answer still stands is computed against the newest revision, with what has changed since.
     */
    get: operations["listQuestions"];
    put?: never;
    /** Ask the engineer about an element of a revision */
    post: operations["askQuestion"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/questions/{questionId}/answer": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /**
     * Answer a question, for the newest revision
     * @description Carries the two digests on the engineer's screen, and is refused when the revision has others.
     */
    post: operations["answerQuestion"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/questions/{questionId}/steps": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /**
     * Give the information wanted, close the question, or open it again
     * @description Done by the role that asked, never by whoever gave the answer.
     */
    post: operations["followQuestion"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/reader-links": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /**
     * Make a link by which someone without an account reads
     * @description Such as the permit reviewer. It is told once, and good until it ends or is withdrawn.
     */
    post: operations["makeReaderLink"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/reader-links/{readerId}": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    post?: never;
    /** Withdraw a reader's link */
    delete: operations["endReaderLink"];
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/record": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /**
     * Entries of the record after a number, oldest first
     * @description Less those that your roles may not see.
     */
    get: operations["readRecord"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/record/bundle": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /**
     * The whole record as one signed file
     * @description To be checked without this service (`npx cornerway verify`). Entries you may not see are leaves alone.
     */
    get: operations["saveRecordBundle"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/record/continuation": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /**
     * That a head continues an earlier one
     * @description RFC 9162 section 2.1.4, from the head over entries 1 to `from` to the one over 1 to `to`, or all.
     */
    get: operations["proveContinuation"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/record/entries/{number}/proof": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /**
     * That an entry is in the record
     * @description RFC 9162 section 2.1.3, under a signed head over the whole record. Of an entry that you may see.
     */
    get: operations["proveEntry"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/record/head": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /**
     * The head of the record, signed
     * @description Over entries 1 to `number`, or all. Keep it: it shows later that nothing before it was altered.
     */
    get: operations["readSignedHead"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/requests": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** Change requests in the order of their numbers */
    get: operations["listRequests"];
    put?: never;
    /** Ask for a change, as operations on the latest revision */
    post: operations["makeRequest"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/requests/{requestId}/answer": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /** Take a change request in, or decline it */
    post: operations["answerRequest"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/requests/{requestId}/premium": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** What a change request adds to the price of its revision */
    get: operations["readRequestPremium"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/requests/{requestId}/preview": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** What taking a change request in would do to the draft */
    get: operations["previewRequest"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/revisions": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** The revisions, latest first */
    get: operations["listRevisions"];
    put?: never;
    /**
     * Send the draft as the next revision
     * @description Carries the draft number and content digest on the sender's screen, and is refused when the draft is another.
     */
    post: operations["sendRevision"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/revisions/{letter}": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** One revision with its scheme and result */
    get: operations["readRevision"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/revisions/{letter}/assessment": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** How the assessment of a revision stands, and how far it is */
    get: operations["readAssessmentRun"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/revisions/{letter}/assessment/again": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /** Have a revision assessed again whose assessment failed */
    post: operations["assessAgain"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/revisions/{letter}/assessment/report": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** What stands behind the verdicts of strength: governing checks, coverage, loads, combinations */
    get: operations["readStrengthReport"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/revisions/{letter}/assessment/runs": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /**
     * Every run of the engine on a revision, and what each says otherwise than the one before
     * @description A revision checked again by a newer engine shows here what that one finds otherwise.
     */
    get: operations["listRuns"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/revisions/{letter}/assessment/stop": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /** Stop the assessment of a revision; its thread is ended */
    post: operations["stopAssessment"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/revisions/{letter}/assessment/working": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** One working of a revision's assessment, by the name its report gives it */
    get: operations["readWorking"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/revisions/{letter}/file": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** A revision as a file */
    get: operations["saveRevision"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/revisions/{letter}/premium": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /**
     * What a revision costs in structure above the same containers stacked plainly
     * @description Quantities of what is drawn, times the rates of the cost book as it is now.
     */
    get: operations["readPremium"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/revisions/{letter}/premium/file": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /**
     * The same as a table
     * @description RFC 4180, with units in the heads of its columns; text that a spreadsheet would take for a formula is led by an apostrophe.
     */
    get: operations["savePremium"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/revisions/{letter}/premium/since/{earlier}": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** What makes up the difference in price since an earlier revision */
    get: operations["readPremiumSince"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/revisions/{letter}/premium/since/{earlier}/file": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /**
     * The difference as a table
     * @description RFC 4180, with units in the heads of its columns; text that a spreadsheet would take for a formula is led by an apostrophe.
     */
    get: operations["savePremiumSince"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/revisions/{letter}/tables/{table}": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /**
     * What a revision holds, as a table
     * @description RFC 4180, units in the names of the columns; text that a spreadsheet would take for a formula is led by an apostrophe. The revision and the cautions follow the last row.
     */
    get: operations["saveTable"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/seal": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /**
     * Everything between the newest revision and its seal
     * @description What stands in the way, checks by a second engineer, dispositions of marks, values confirmed, issues.
     */
    get: operations["readSeal"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/seal-issues": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /**
     * Issue the newest revision for seal
     * @description Takes PRELIMINARY off the sheets, once nothing stands in the way; the service itself never seals.
     */
    post: operations["issueForSeal"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/seal-issues/{issueId}/copies": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /** Lay the sealed PDF that came back beside its issue */
    post: operations["keepSealedCopy"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/sets": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /**
     * The permit sets that were asked for, latest first
     * @description At most 50.
     */
    get: operations["listSets"];
    put?: never;
    /**
     * Have the permit set of a revision printed
     * @description From the record as it stands now. The same revision, record head, units and template give the same bytes. Printing is refused when drawings, schedules and calculations disagree.
     */
    post: operations["askForSet"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/sets/{setId}": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** How far a permit set is */
    get: operations["readSet"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/sets/{setId}/file": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** The printed set */
    get: operations["savePermitSet"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/sets/{setId}/stop": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /** Stop the printing of a permit set */
    post: operations["stopSet"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/site": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** What is built of the newest revision that may be built from, item by item */
    get: operations["readSite"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/site/judgements": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /** Accept a difference, have it made as drawn, or open an item again */
    post: operations["judgeSiteItem"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/site/words": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /**
     * Say that an item stands as drawn, stands otherwise, or is not there
     * @description Welds and hold points are closed by the engineer.
     */
    post: operations["saySiteWord"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/stamps": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** The stamps, each with whether it is still on what is there */
    get: operations["listStamps"];
    put?: never;
    /**
     * Stamp the latest revision, or one item of it
     * @description Carries the two digests on the engineer's screen, and is refused when the revision has others; asks for the password again.
     */
    post: operations["pressStamp"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/survey": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /**
     * The containers offered for the building, each as it stands now
     * @description With what they are held against, and where the newest revision says otherwise than the survey.
     */
    get: operations["readSurvey"];
    put?: never;
    /** Offer a container by its number (ISO 6346) */
    post: operations["offerContainer"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/survey/{containerId}/inspections": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /** Keep what an inspection found of a container */
    post: operations["inspectContainer"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/survey/{containerId}/judgements": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /**
     * Accept a container, ask for its repair, or reject it
     * @description None is accepted with damage or thickness beyond its limit.
     */
    post: operations["judgeContainer"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/survey/{containerId}/positions": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /**
     * Assign an accepted container to a unit of the draft, or release it
     * @description What was measured of it is drawn on the unit in the same act, or taken off again.
     */
    post: operations["placeContainer"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/survey/limits": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /** Set what containers of this project are held against */
    post: operations["setSurveyLimits"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/thread": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /**
     * Notes, change requests and stamps, all at once
     * @description The latest 1000 of each, oldest first. The lists of notes and requests hold the earlier ones.
     */
    get: operations["readThread"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/webhooks": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** The webhooks of a project */
    get: operations["listWebhooks"];
    put?: never;
    /**
     * Have an address told of the record
     * @description It is told of what whoever made it may see. Its secret is shown this once.
     */
    post: operations["makeWebhook"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/webhooks/{webhookId}": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    post?: never;
    /** Take a webhook away */
    delete: operations["endWebhook"];
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/webhooks/{webhookId}/deliveries": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** What a webhook was told, the latest first */
    get: operations["listDeliveries"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/projects/{projectId}/webhooks/{webhookId}/resume": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    /** Set a stopped webhook going again */
    post: operations["resumeWebhook"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/record-keys": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /**
     * The keys that sign heads of records, oldest first
     * @description For everyone, signed in or not: what a bundle is held against must come from outside it.
     */
    get: operations["listRecordKeys"];
    put?: never;
    /**
     * Have a new key sign from now on
     * @description The one before signs it as its last act and stays listed. `lost` begins a chain anew where the one before cannot be opened any more: nothing vouches for it but you, who tell its fingerprint.
     */
    post: operations["rotateRecordKey"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/session": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** Who is signed in */
    get: operations["readSession"];
    put?: never;
    /** Sign in; the session comes as a cookie */
    post: operations["signIn"];
    /** Sign out */
    delete: operations["signOut"];
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/tokens": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** Your access tokens that are good */
    get: operations["listTokens"];
    put?: never;
    /**
     * Make an access token for scripts
     * @description Its secret is shown this once.
     */
    post: operations["makeToken"];
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/api/tokens/{tokenId}": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    get?: never;
    put?: never;
    post?: never;
    /** Withdraw an access token */
    delete: operations["withdrawToken"];
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/health": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** Whether the process answers */
    get: operations["isAlive"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
  "/ready": {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    /** Whether the process can do its work */
    get: operations["isReady"];
    put?: never;
    post?: never;
    delete?: never;
    options?: never;
    head?: never;
    patch?: never;
    trace?: never;
  };
}
export type webhooks = Record<string, never>;
export interface components {
  schemas: {
    AccessToken: {
      expiresAt: components["schemas"]["Moment"];
      /** Format: uuid */
      id: string;
      lastUsedAt: components["schemas"]["Moment"] | null;
      madeAt: components["schemas"]["Moment"];
      name: string;
      prefix: components["schemas"]["TokenPrefix"];
      revokedAt: components["schemas"]["Moment"] | null;
      scopes: components["schemas"]["TokenScope"][];
    };
    AccessTokenMade: {
      expiresAt: components["schemas"]["Moment"];
      /** Format: uuid */
      id: string;
      lastUsedAt: components["schemas"]["Moment"] | null;
      madeAt: components["schemas"]["Moment"];
      name: string;
      prefix: components["schemas"]["TokenPrefix"];
      revokedAt: components["schemas"]["Moment"] | null;
      scopes: components["schemas"]["TokenScope"][];
      secret: string | null;
    };
    Account: {
      administrator: boolean;
      licence: components["schemas"]["Licence"] | null;
      person: {
        email: string;
        id: components["schemas"]["PersonId"];
        name: string;
      };
      stampWording: components["schemas"]["StampWording"];
    };
    /** Format: uuid */
    ActId: string;
    /** Format: uuid */
    ActIdInput: string;
    Actor: {
      id: components["schemas"]["PersonId"];
      name: string;
      /** @enum {string} */
      role: "architect" | "engineer" | "checker" | "owner" | "reader" | "administrator" | "service";
      token?: components["schemas"]["TokenPrefix"] | undefined;
    };
    AngleMdeg: number;
    AngleMdegInput: number;
    Answer:
      | {
          /** @constant */
          kind: "as drawn";
          text: unknown | null;
        }
      | {
          conditions: components["schemas"]["NewCondition"][];
          /** @constant */
          kind: "with conditions";
          text: unknown | null;
        }
      | {
          /** @constant */
          kind: "no, but these options";
          options: unknown[];
          text: unknown;
        }
      | {
          /** @constant */
          kind: "need information";
          text: unknown;
        };
    AnswerInput:
      | {
          /** @constant */
          kind: "as drawn";
          text: string | null;
        }
      | {
          conditions: components["schemas"]["NewConditionInput"][];
          /** @constant */
          kind: "with conditions";
          text: string | null;
        }
      | {
          /** @constant */
          kind: "no, but these options";
          options: string[];
          text: string;
        }
      | {
          /** @constant */
          kind: "need information";
          text: string;
        };
    AnswerRequestInput:
      | {
          /** Format: uuid */
          actId: string;
          /** @constant */
          answer: "take in";
          base: number;
        }
      | {
          /** @constant */
          answer: "decline";
          reason: string;
        };
    ArchiveBroughtIn: {
      entries: number;
      name: string;
      projectId: components["schemas"]["ProjectId"];
      signedAt: components["schemas"]["Moment"];
      signedBy: components["schemas"]["Digest"];
    };
    AskForSetInput: {
      /** Format: uuid */
      id: string;
      letter: components["schemas"]["RevisionLetterInput"];
      units: components["schemas"]["UnitsInput"];
    };
    Assessment: {
      bearings: components["schemas"]["Bearing"][];
      engineVersion: string;
      marks: components["schemas"]["Mark"][];
      path: components["schemas"]["PathStretch"][];
      questions: number;
      /** @enum {string} */
      scope:
        | "load path only, no strength checked"
        | "load path, and strength under gravity loads"
        | "load path, and strength under all loads";
      statics: {
        loadKn: number;
        reactionKn: number;
        reactions: {
          at: components["schemas"]["PointMm"];
          elementId: components["schemas"]["ElementId"];
          forceKn: number;
        }[];
        residualKn: number;
      };
      strength?:
        | {
            assumed: string[];
            checks: number;
            envelope: {
              assumptions: string;
              runs: number;
              withoutEquilibrium: number;
            }[];
            notJudged: string[];
            vectors: number;
          }
        | undefined;
      strengthRefused?: string[] | undefined;
      units: {
        id: components["schemas"]["ElementId"];
        imposedKn: number;
        storey: number;
        verdict: components["schemas"]["Verdict"];
        weightKn: number;
      }[];
      verdict: components["schemas"]["Verdict"];
    };
    AssessmentRun: {
      askedAt: components["schemas"]["Moment"];
      attempt: number;
      engineVersion: string | null;
      leftMs: number | null;
      letter: components["schemas"]["RevisionLetter"];
      startedAt: components["schemas"]["Moment"] | null;
      state: components["schemas"]["AssessmentState"];
      steps: {
        done: number;
        of: number;
      };
      why: string | null;
    };
    /** @enum {string} */
    AssessmentState: "waiting" | "done" | "failed" | "unreadable";
    Author: {
      id: components["schemas"]["PersonId"];
      name: string;
      role: components["schemas"]["Role"];
      token?: components["schemas"]["TokenPrefix"] | undefined;
    };
    AuthorityProfile: {
      /** @enum {string} */
      delta: "revision letter" | "issue number";
      /** @enum {string} */
      earlierDeltas: "taken off" | "stay";
      /** @enum {string} */
      marks: "clouds and deltas" | "deltas" | "none";
      name: unknown | null;
      numbered: boolean;
      replyNames: ("detail" | "page")[];
    };
    AuthorityProfileInput: {
      /** @enum {string} */
      delta: "revision letter" | "issue number";
      /** @enum {string} */
      earlierDeltas: "taken off" | "stay";
      /** @enum {string} */
      marks: "clouds and deltas" | "deltas" | "none";
      name: string | null;
      numbered: boolean;
      replyNames: ("detail" | "page")[];
    };
    Beam: {
      from: {
        xUm: components["schemas"]["LengthUm"];
        yUm: components["schemas"]["LengthUm"];
        zUm: components["schemas"]["LengthUm"];
      };
      id: components["schemas"]["ElementId"];
      section: components["schemas"]["SectionName"];
      tag: components["schemas"]["Tag"];
      to: {
        xUm: components["schemas"]["LengthUm"];
        yUm: components["schemas"]["LengthUm"];
        zUm: components["schemas"]["LengthUm"];
      };
    };
    BeamInput: {
      from: {
        xUm: components["schemas"]["LengthUmInput"];
        yUm: components["schemas"]["LengthUmInput"];
        zUm: components["schemas"]["LengthUmInput"];
      };
      id: components["schemas"]["ElementIdInput"];
      section: components["schemas"]["SectionNameInput"];
      tag: components["schemas"]["TagInput"];
      to: {
        xUm: components["schemas"]["LengthUmInput"];
        yUm: components["schemas"]["LengthUmInput"];
        zUm: components["schemas"]["LengthUmInput"];
      };
    };
    Bearing: {
      at: components["schemas"]["PointMm"];
      fitting?: components["schemas"]["FittingName"] | undefined;
      forceKn: number;
      gapMm: number;
      heldById?: components["schemas"]["ElementId"] | undefined;
      id: string;
      /** @enum {string} */
      joint: "lock" | "made connection" | "seat" | "bearing" | "none";
      offsetXMm: number;
      offsetYMm: number;
      /** @enum {string} */
      on: "fitting" | "rail" | "post" | "beam" | "pad" | "ground" | "sheet" | "air";
      onElementId?: components["schemas"]["ElementId"] | undefined;
      seatId?: components["schemas"]["ElementId"] | undefined;
      unitId: components["schemas"]["ElementId"];
    };
    BringInCommentsInput: {
      /** @enum {string} */
      form: "csv" | "lines";
      /** Format: uuid */
      id: string;
      text: string;
    };
    BringInInput: {
      base: number;
      file: unknown;
      id: components["schemas"]["ActIdInput"];
    };
    /** @enum {string} */
    Certainty: "published" | "derived" | "memory" | "common practice";
    /** @enum {string} */
    CertaintyInput: "published" | "derived" | "memory" | "common practice";
    ChangeRequest: {
      answer: {
        at: components["schemas"]["Moment"];
        by: components["schemas"]["Author"];
        reason: string | null;
      } | null;
      author: components["schemas"]["Author"];
      contentDigest: components["schemas"]["Digest"];
      id: components["schemas"]["RequestId"];
      madeAt: components["schemas"]["Moment"];
      number: number;
      operations: components["schemas"]["Operation"][];
      revision: components["schemas"]["RevisionLetter"];
      /** @enum {string} */
      state: "open" | "taken in" | "declined";
      text: string;
    };
    Check: {
      author: components["schemas"]["Author"];
      checkedAt: components["schemas"]["Moment"];
      contentDigest: components["schemas"]["Digest"];
      id: components["schemas"]["CheckId"];
      number: number;
      /** @enum {string} */
      outcome: "agrees" | "points open";
      points: components["schemas"]["NewCondition"][];
      resultDigest: components["schemas"]["Digest"];
      revision: components["schemas"]["RevisionLetter"];
      text: unknown;
    };
    /** Format: uuid */
    CheckId: string;
    /** Format: uuid */
    CheckIdInput: string;
    CheckNow: {
      check: components["schemas"]["Check"];
      standing: components["schemas"]["Standing"];
    };
    CheckResult: {
      assumptions: string;
      certainty?: components["schemas"]["Certainty"] | undefined;
      check: string;
      clause?:
        | {
            certainty: components["schemas"]["Certainty"];
            document: string;
            edition: string;
            place: string;
          }
        | undefined;
      /** @enum {string} */
      coverage: "checked" | "bounded" | "not covered" | "does not arise";
      envelope: {
        assumptions: string;
        utilisation: number | null;
      }[];
      held: string[];
      id: components["schemas"]["WorkingId"];
      ifHeldDown?: (number | null) | undefined;
      ifProved?: number | undefined;
      ownerId: string;
      part: string;
      place: string;
      refused?: string | undefined;
      run: string;
      upperBound?: number | undefined;
      utilisation: number | null;
      wouldDo?:
        | {
            depthMm: number;
            sideMm: number;
          }
        | undefined;
    };
    CheckWorking: {
      certainty: components["schemas"]["Certainty"];
      clause: {
        certainty: components["schemas"]["Certainty"];
        document: string;
        edition: string;
        place: string;
      };
      limit?:
        | {
            symbol: string;
            unit: string;
            value: number;
          }
        | undefined;
      readonly notes: string[];
      readonly parts: components["schemas"]["CheckWorking"][];
      result: {
        symbol: string;
        unit: string;
        value: number;
      };
      readonly steps: (
        | {
            formula: string;
            /** @constant */
            kind: "value";
            place?: string | undefined;
            result: number;
            substituted: string;
            symbol: string;
            unit: string;
          }
        | {
            holds: boolean;
            /** @constant */
            kind: "condition";
            left: string;
            leftValue: number;
            place?: string | undefined;
            /** @enum {string} */
            relation: "<=" | "<" | ">=" | ">";
            right: string;
            rightValue: number;
          }
      )[];
      readonly symbols: {
        certainty: components["schemas"]["Certainty"];
        meaning: string;
        source?: string | undefined;
        symbol: string;
        unit: string;
        value: number;
      }[];
      title: string;
      utilisation?: number | undefined;
    };
    /** @enum {string} */
    CodeEdition: "IBC 2021" | "IBC 2024";
    /** @enum {string} */
    CodeEditionInput: "IBC 2021" | "IBC 2024";
    CommentStep:
      | {
          at: components["schemas"]["Moment"];
          by: components["schemas"]["Author"];
          /** Format: uuid */
          id: string;
          /** @constant */
          step: "assigned";
          to: components["schemas"]["PersonId"];
          toName: string;
        }
      | {
          at: components["schemas"]["Moment"];
          by: components["schemas"]["Author"];
          detail: unknown | null;
          form: components["schemas"]["ReplyForm"];
          /** Format: uuid */
          id: string;
          page: unknown | null;
          revision: components["schemas"]["RevisionLetter"];
          sheet: unknown;
          /** @constant */
          step: "answered";
          text: unknown;
        }
      | {
          at: components["schemas"]["Moment"];
          by: components["schemas"]["Author"];
          /** Format: uuid */
          id: string;
          /** @constant */
          step: "closed";
        }
      | {
          at: components["schemas"]["Moment"];
          by: components["schemas"]["Author"];
          /** Format: uuid */
          id: string;
          /** @constant */
          step: "opened again";
          why: string;
        };
    /** @enum {string} */
    CompassPoint: "north" | "south" | "east" | "west";
    /** Format: uuid */
    ConditionId: string;
    /** Format: uuid */
    ConditionIdInput: string;
    ConditionNow: {
      author: components["schemas"]["Author"];
      id: components["schemas"]["ConditionId"];
      number: number;
      owedBy: components["schemas"]["OwingRole"];
      raisedAt: components["schemas"]["Moment"];
      revision: components["schemas"]["RevisionLetter"];
      source: components["schemas"]["ConditionSource"];
      /** Format: uuid */
      sourceId: string;
      state: components["schemas"]["ConditionState"];
      steps: components["schemas"]["ConditionStep"][];
      text: unknown;
      waitsFor: components["schemas"]["Role"] | null;
    };
    /** @enum {string} */
    ConditionSource: "answer" | "stamp" | "check";
    /** @enum {string} */
    ConditionState: "open" | "met" | "closed";
    ConditionStep:
      | {
          at: components["schemas"]["Moment"];
          by: components["schemas"]["Author"];
          id: components["schemas"]["StepId"];
          /** @constant */
          step: "met";
          text: unknown;
        }
      | {
          at: components["schemas"]["Moment"];
          by: components["schemas"]["Author"];
          id: components["schemas"]["StepId"];
          /** @constant */
          step: "closed";
        }
      | {
          at: components["schemas"]["Moment"];
          by: components["schemas"]["Author"];
          id: components["schemas"]["StepId"];
          /** @constant */
          step: "reopened";
          text: unknown;
        };
    Confirmation: {
      against: unknown;
      author: components["schemas"]["Author"];
      confirmedAt: components["schemas"]["Moment"];
      id: components["schemas"]["ConfirmationId"];
      number: number;
      values: components["schemas"]["MemoryValue"][];
    };
    /** Format: uuid */
    ConfirmationId: string;
    /** Format: uuid */
    ConfirmationIdInput: string;
    ConsistencyProof: {
      from: number;
      head: components["schemas"]["SignedHead"];
      proof: components["schemas"]["Digest"][];
    };
    Container: {
      /** @constant */
      doors?: "welded shut" | undefined;
      id: components["schemas"]["ElementId"];
      plateTareKg?: number | undefined;
      tag: components["schemas"]["Tag"];
      turnMdeg: components["schemas"]["AngleMdeg"];
      type: components["schemas"]["ContainerType"];
      xUm: components["schemas"]["LengthUm"];
      yUm: components["schemas"]["LengthUm"];
      zUm: components["schemas"]["LengthUm"];
    };
    ContainerInput: {
      /** @constant */
      doors?: "welded shut" | undefined;
      id: components["schemas"]["ElementIdInput"];
      plateTareKg?: number | undefined;
      tag: components["schemas"]["TagInput"];
      turnMdeg: components["schemas"]["AngleMdegInput"];
      type: components["schemas"]["ContainerTypeInput"];
      xUm: components["schemas"]["LengthUmInput"];
      yUm: components["schemas"]["LengthUmInput"];
      zUm: components["schemas"]["LengthUmInput"];
    };
    /** @enum {string} */
    ContainerType: "1EEE" | "1EE" | "1AAA" | "1AA" | "1A" | "1BBB" | "1BB" | "1CCC" | "1CC" | "1C" | "1D";
    /** @enum {string} */
    ContainerTypeInput: "1EEE" | "1EE" | "1AAA" | "1AA" | "1A" | "1BBB" | "1BB" | "1CCC" | "1CC" | "1C" | "1D";
    CostBook: {
      currency: string;
      labour: {
        [key: string]: components["schemas"]["CostFigure"];
      };
      rates: {
        [key: string]: components["schemas"]["CostFigure"];
      };
    };
    CostBookInput: {
      currency: string;
      labour: {
        [key: string]: components["schemas"]["CostFigureInput"];
      };
      rates: {
        [key: string]: components["schemas"]["CostFigureInput"];
      };
    };
    CostFigure: {
      amount: number;
      source: unknown | null;
    };
    CostFigureInput: {
      amount: number;
      source: string | null;
    };
    CoverageRow: {
      check: string;
      /** @enum {string} */
      coverage: "checked" | "bounded" | "not covered" | "does not arise";
      effect: string;
      part: string;
      run: boolean;
      why?: string | undefined;
    };
    CoverChange: {
      elements: components["schemas"]["ElementId"][];
      found?: components["schemas"]["ElementId"][] | undefined;
      results: ("verdict" | "bearings" | "load path" | "reactions" | "marks")[];
      whole: ("site and code edition" | "design basis" | "engine version" | "result cannot be read")[];
    };
    Damage: {
      kind: components["schemas"]["DamageKind"];
      member: components["schemas"]["MemberName"];
      place: unknown;
      sizeUm: components["schemas"]["PositiveLengthUm"];
    };
    DamageInput: {
      kind: components["schemas"]["DamageKindInput"];
      member: components["schemas"]["MemberNameInput"];
      place: string;
      sizeUm: components["schemas"]["PositiveLengthUmInput"];
    };
    /** @enum {string} */
    DamageKind: "bent" | "torn";
    /** @enum {string} */
    DamageKindInput: "bent" | "torn";
    DamageLimit: {
      certainty: components["schemas"]["Certainty"];
      kind: components["schemas"]["DamageKind"];
      limitUm: components["schemas"]["PositiveLengthUm"];
      member: components["schemas"]["MemberName"];
      source: unknown;
    };
    DamageLimitInput: {
      certainty: components["schemas"]["CertaintyInput"];
      kind: components["schemas"]["DamageKindInput"];
      limitUm: components["schemas"]["PositiveLengthUmInput"];
      member: components["schemas"]["MemberNameInput"];
      source: string;
    };
    /** Format: date */
    Day: string;
    /** Format: date */
    DayInput: string;
    Decision: {
      author: components["schemas"]["Author"];
      contentDigest: components["schemas"]["Digest"];
      costBookDigest: components["schemas"]["Digest"];
      currency: string;
      decidedAt: components["schemas"]["Moment"];
      /** @enum {string} */
      decision: "agree" | "decline";
      forShow: boolean;
      id: components["schemas"]["DecisionId"];
      money: number;
      premiumDigest: components["schemas"]["Digest"];
      reason: string | null;
      requestId: components["schemas"]["RequestId"] | null;
      revision: components["schemas"]["RevisionLetter"];
    };
    /** Format: uuid */
    DecisionId: string;
    /** Format: uuid */
    DecisionIdInput: string;
    DecisionShown: {
      decision: components["schemas"]["Decision"];
      latest: boolean;
      stale: ("content" | "cost book")[];
    };
    DesignBasis: {
      concreteMpa: number;
      friction: number;
      hazards: components["schemas"]["SiteHazards"] | null;
      levelErrorUm: components["schemas"]["LengthUm"];
      lifting: {
        equalised: boolean;
        factor: number;
        legMdeg: number;
      };
      settlementUm: components["schemas"]["LengthUm"];
      sheetWalls: components["schemas"]["SheetWalls"];
      soil: {
        /** @enum {string} */
        class: "crystalline bedrock" | "sedimentary or foliated rock" | "gravel" | "sand" | "clay or silt";
        report?:
          | {
              bearingPa: number;
              source: unknown;
            }
          | undefined;
      };
      systems: {
        /** @enum {string} */
        x:
          | "container sheet walls"
          | "single unit by the simplified path"
          | "special moment frames"
          | "intermediate moment frames"
          | "ordinary moment frames"
          | "special concentric braces"
          | "ordinary concentric braces"
          | "special plate walls"
          | "special cantilever columns"
          | "ordinary cantilever columns";
        /** @enum {string} */
        y:
          | "container sheet walls"
          | "single unit by the simplified path"
          | "special moment frames"
          | "intermediate moment frames"
          | "ordinary moment frames"
          | "special concentric braces"
          | "ordinary concentric braces"
          | "special plate walls"
          | "special cantilever columns"
          | "ordinary cantilever columns";
      };
    };
    DesignBasisInput: {
      concreteMpa: number;
      friction: number;
      hazards: components["schemas"]["SiteHazardsInput"] | null;
      levelErrorUm: components["schemas"]["LengthUmInput"];
      lifting: {
        equalised: boolean;
        factor: number;
        legMdeg: number;
      };
      settlementUm: components["schemas"]["LengthUmInput"];
      sheetWalls: components["schemas"]["SheetWallsInput"];
      soil: {
        /** @enum {string} */
        class: "crystalline bedrock" | "sedimentary or foliated rock" | "gravel" | "sand" | "clay or silt";
        report?:
          | {
              bearingPa: number;
              source: string;
            }
          | undefined;
      };
      systems: {
        /** @enum {string} */
        x:
          | "container sheet walls"
          | "single unit by the simplified path"
          | "special moment frames"
          | "intermediate moment frames"
          | "ordinary moment frames"
          | "special concentric braces"
          | "ordinary concentric braces"
          | "special plate walls"
          | "special cantilever columns"
          | "ordinary cantilever columns";
        /** @enum {string} */
        y:
          | "container sheet walls"
          | "single unit by the simplified path"
          | "special moment frames"
          | "intermediate moment frames"
          | "ordinary moment frames"
          | "special concentric braces"
          | "ordinary concentric braces"
          | "special plate walls"
          | "special cantilever columns"
          | "ordinary cantilever columns";
      };
    };
    DifferentLine: {
      after: components["schemas"]["PremiumLine"] | null;
      before: components["schemas"]["PremiumLine"] | null;
      elementId: string;
      /** @enum {string} */
      item:
        | "cut"
        | "paint repair"
        | "weld of 5 mm"
        | "steel"
        | "lock"
        | "anchor"
        | "pad"
        | "pad concrete"
        | "crane lift"
        | "engineering";
      money: number;
      section: string | null;
    };
    Digest: string;
    DigestInput: string;
    /** @enum {string} */
    Disposition: "No exceptions taken" | "Make corrections noted" | "Revise and resubmit" | "Rejected";
    /** Format: uuid */
    DispositionId: string;
    /** Format: uuid */
    DispositionIdInput: string;
    /** @enum {string} */
    DispositionInput: "No exceptions taken" | "Make corrections noted" | "Revise and resubmit" | "Rejected";
    Draft: {
      contentDigest: components["schemas"]["Digest"];
      movesSinceRevision: number;
      number: number;
      scheme: components["schemas"]["Scheme"];
    };
    DraftActDone: {
      contentDigest: components["schemas"]["Digest"];
      draftNumber: number;
      entry: number;
    };
    DraftActInput: {
      base: number;
      id: components["schemas"]["ActIdInput"];
      operations: components["schemas"]["OperationInput"][];
      undoes?: components["schemas"]["ActIdInput"] | undefined;
    };
    ElementId: string;
    ElementIdInput: string;
    /** @enum {string} */
    Face: "left" | "right" | "front" | "door" | "roof" | "floor";
    /** @enum {string} */
    FaceInput: "left" | "right" | "front" | "door" | "roof" | "floor";
    FieldProblem: {
      detail: string;
      pointer: string;
    };
    /** Format: uuid */
    FileId: string;
    /** Format: uuid */
    FileIdInput: string;
    /** @enum {string} */
    FittingName:
      | "front-right"
      | "front-left"
      | "door-right"
      | "door-left"
      | "front-right-inner"
      | "front-left-inner"
      | "door-right-inner"
      | "door-left-inner";
    /** @enum {string} */
    FittingNameInput:
      | "front-right"
      | "front-left"
      | "door-right"
      | "door-left"
      | "front-right-inner"
      | "front-left-inner"
      | "door-right-inner"
      | "door-left-inner";
    FloorLoad: {
      /** @enum {string} */
      case: "imposed" | "finish";
      containerId: components["schemas"]["ElementId"];
      id: components["schemas"]["ElementId"];
      pressurePa: components["schemas"]["PressurePa"];
      /** @enum {string} */
      surface: "floor" | "roof";
    };
    FloorLoadInput: {
      /** @enum {string} */
      case: "imposed" | "finish";
      containerId: components["schemas"]["ElementIdInput"];
      id: components["schemas"]["ElementIdInput"];
      pressurePa: components["schemas"]["PressurePaInput"];
      /** @enum {string} */
      surface: "floor" | "roof";
    };
    FloorUse: {
      containerId: components["schemas"]["ElementId"];
      id: components["schemas"]["ElementId"];
      occupancy: components["schemas"]["Occupancy"];
      /** @enum {string} */
      surface: "floor" | "roof";
    };
    FloorUseInput: {
      containerId: components["schemas"]["ElementIdInput"];
      id: components["schemas"]["ElementIdInput"];
      occupancy: components["schemas"]["OccupancyInput"];
      /** @enum {string} */
      surface: "floor" | "roof";
    };
    Framing: {
      header: components["schemas"]["SectionName"];
      jamb: components["schemas"]["SectionName"];
      sill?: components["schemas"]["SectionName"] | undefined;
    };
    FramingInput: {
      header: components["schemas"]["SectionNameInput"];
      jamb: components["schemas"]["SectionNameInput"];
      sill?: components["schemas"]["SectionNameInput"] | undefined;
    };
    FreeLoad:
      | {
          alongXN: number;
          alongYN: number;
          /** @enum {string} */
          case: "finish" | "plant" | "imposed" | "snow" | "wind";
          containerId: components["schemas"]["ElementId"];
          downN: number;
          id: components["schemas"]["ElementId"];
          note: unknown;
          /** @constant */
          shape: "point";
          /** @enum {string} */
          surface: "floor" | "roof";
          tag: components["schemas"]["Tag"];
          xUm: components["schemas"]["LengthUm"];
          yUm: components["schemas"]["LengthUm"];
        }
      | {
          /** @enum {string} */
          case: "finish" | "plant" | "imposed" | "snow" | "wind";
          containerId: components["schemas"]["ElementId"];
          downNPerM: number;
          id: components["schemas"]["ElementId"];
          note: unknown;
          /** @constant */
          shape: "line";
          /** @enum {string} */
          surface: "floor" | "roof";
          tag: components["schemas"]["Tag"];
          toXUm: components["schemas"]["LengthUm"];
          toYUm: components["schemas"]["LengthUm"];
          xUm: components["schemas"]["LengthUm"];
          yUm: components["schemas"]["LengthUm"];
        }
      | {
          /** @enum {string} */
          case: "finish" | "plant" | "imposed" | "snow" | "wind";
          containerId: components["schemas"]["ElementId"];
          id: components["schemas"]["ElementId"];
          lengthUm: components["schemas"]["PositiveLengthUm"];
          note: unknown;
          pressurePa: components["schemas"]["PressurePa"];
          /** @constant */
          shape: "area";
          /** @enum {string} */
          surface: "floor" | "roof";
          tag: components["schemas"]["Tag"];
          widthUm: components["schemas"]["PositiveLengthUm"];
          xUm: components["schemas"]["LengthUm"];
          yUm: components["schemas"]["LengthUm"];
        };
    FreeLoadInput:
      | {
          alongXN: number;
          alongYN: number;
          /** @enum {string} */
          case: "finish" | "plant" | "imposed" | "snow" | "wind";
          containerId: components["schemas"]["ElementIdInput"];
          downN: number;
          id: components["schemas"]["ElementIdInput"];
          note: string;
          /** @constant */
          shape: "point";
          /** @enum {string} */
          surface: "floor" | "roof";
          tag: components["schemas"]["TagInput"];
          xUm: components["schemas"]["LengthUmInput"];
          yUm: components["schemas"]["LengthUmInput"];
        }
      | {
          /** @enum {string} */
          case: "finish" | "plant" | "imposed" | "snow" | "wind";
          containerId: components["schemas"]["ElementIdInput"];
          downNPerM: number;
          id: components["schemas"]["ElementIdInput"];
          note: string;
          /** @constant */
          shape: "line";
          /** @enum {string} */
          surface: "floor" | "roof";
          tag: components["schemas"]["TagInput"];
          toXUm: components["schemas"]["LengthUmInput"];
          toYUm: components["schemas"]["LengthUmInput"];
          xUm: components["schemas"]["LengthUmInput"];
          yUm: components["schemas"]["LengthUmInput"];
        }
      | {
          /** @enum {string} */
          case: "finish" | "plant" | "imposed" | "snow" | "wind";
          containerId: components["schemas"]["ElementIdInput"];
          id: components["schemas"]["ElementIdInput"];
          lengthUm: components["schemas"]["PositiveLengthUmInput"];
          note: string;
          pressurePa: components["schemas"]["PressurePaInput"];
          /** @constant */
          shape: "area";
          /** @enum {string} */
          surface: "floor" | "roof";
          tag: components["schemas"]["TagInput"];
          widthUm: components["schemas"]["PositiveLengthUmInput"];
          xUm: components["schemas"]["LengthUmInput"];
          yUm: components["schemas"]["LengthUmInput"];
        };
    HeldPart: {
      confirmedAt: components["schemas"]["Moment"] | null;
      expiresAt: components["schemas"]["Moment"] | null;
      role: components["schemas"]["Role"];
      since: components["schemas"]["Moment"];
    };
    HiddenEntry: {
      leaf: components["schemas"]["Digest"];
      number: number;
    };
    /** @enum {string} */
    HoldPoint:
      | "container surveyed"
      | "steel as assumed before cutting"
      | "ground and level of the pad"
      | "in its place before cutting"
      | "shored before cutting";
    InclusionProof: {
      head: components["schemas"]["SignedHead"];
      leaf: components["schemas"]["Digest"];
      number: number;
      proof: components["schemas"]["Digest"][];
    };
    Invitation: {
      email: string;
      expiresAt: components["schemas"]["Moment"];
      id: components["schemas"]["InvitationId"];
      invitedBy: string;
      madeAt: components["schemas"]["Moment"];
      partEndsAt: components["schemas"]["Moment"] | null;
      role: components["schemas"]["Role"];
    };
    /** Format: uuid */
    InvitationId: string;
    /** Format: uuid */
    InvitationIdInput: string;
    InvitationMade: {
      invitation: components["schemas"]["Invitation"];
      letterSent: boolean;
      path: string;
    };
    IssueForSealInput: {
      issue: components["schemas"]["NewSealIssueInput"];
      password: string;
    };
    JudgeConditionInput:
      | {
          id: components["schemas"]["StepIdInput"];
          /** @constant */
          step: "closed";
        }
      | {
          id: components["schemas"]["StepIdInput"];
          /** @constant */
          step: "reopened";
          text: string;
        };
    JudgedPart: {
      check: string;
      envelope?:
        | {
            least: number;
            leastIn: string;
            most: number | null;
            mostIn: string;
          }
        | undefined;
      ifProved?: number | undefined;
      part: string;
      partId: string;
      place: string;
      run: string;
      upperBound?: number | undefined;
      utilisation: number | null;
      wouldDo?:
        | {
            depthMm: number;
            sideMm: number;
          }
        | undefined;
    };
    KeptCostBook: {
      currency: string;
      labour: {
        [key: string]: components["schemas"]["CostFigure"];
      };
      rates: {
        [key: string]: components["schemas"]["CostFigure"];
      };
    };
    KeptFile: {
      author: components["schemas"]["Author"];
      digest: components["schemas"]["Digest"];
      id: components["schemas"]["FileId"];
      keptAt: components["schemas"]["Moment"];
      /** @enum {string} */
      mediaType: "application/pdf" | "image/jpeg" | "image/png";
      name: unknown;
      sizeBytes: number;
    };
    KeptOption: {
      author: components["schemas"]["Author"];
      containers: number;
      contentDigest: components["schemas"]["Digest"];
      id: components["schemas"]["OptionId"];
      keptAt: components["schemas"]["Moment"];
      name: string;
      place: number;
    };
    KeptProject: {
      client: string;
      id: components["schemas"]["ProjectId"];
      name: string;
      openedAt: components["schemas"]["Moment"];
      place: string;
    };
    LengthUm: number;
    LengthUmInput: number;
    Licence: {
      jurisdiction: unknown;
      number: unknown;
    };
    LicenceChangeInput: {
      licence: components["schemas"]["LicenceInput"] | null;
    };
    LicenceInput: {
      jurisdiction: string;
      number: string;
    };
    LinkUsed: {
      projectId: components["schemas"]["ProjectId"] | null;
      session: components["schemas"]["Session"];
    };
    ListedKey: {
      fingerprint: components["schemas"]["Digest"];
      follows: {
        fingerprint: components["schemas"]["Digest"];
        signature: components["schemas"]["Signature"];
      } | null;
      publicKey: components["schemas"]["PublicKey"];
      since: components["schemas"]["Moment"];
      until: components["schemas"]["Moment"] | null;
    };
    LoadDerivation: {
      certainty: components["schemas"]["Certainty"];
      clause: {
        certainty: components["schemas"]["Certainty"];
        document: string;
        edition: string;
        place: string;
      };
      /** @enum {string} */
      group: "dead" | "imposed" | "roof" | "snow" | "wind" | "earthquake";
      id: components["schemas"]["WorkingId"];
      symbol: string;
      title: string;
      unit: string;
      value: number;
    };
    Lock: {
      containerId: components["schemas"]["ElementId"];
      fitting: components["schemas"]["FittingName"];
      id: components["schemas"]["ElementId"];
      /** @enum {string} */
      kind: "lock" | "made connection" | "hold-down";
      tag: components["schemas"]["Tag"];
      tested?:
        | {
            shearN: number;
            source: unknown;
            tensionN: number;
          }
        | undefined;
    };
    LockInput: {
      containerId: components["schemas"]["ElementIdInput"];
      fitting: components["schemas"]["FittingNameInput"];
      id: components["schemas"]["ElementIdInput"];
      /** @enum {string} */
      kind: "lock" | "made connection" | "hold-down";
      tag: components["schemas"]["TagInput"];
      tested?:
        | {
            shearN: number;
            source: string;
            tensionN: number;
          }
        | undefined;
    };
    Mark: {
      at: components["schemas"]["PointMm"];
      basis: string;
      certainty: components["schemas"]["Certainty"];
      elements: components["schemas"]["ElementId"][];
      fact: components["schemas"]["MarkFact"];
      id: string;
      verdict: components["schemas"]["Verdict"];
    };
    MarkDisposition: {
      author: components["schemas"]["Author"];
      calculation: {
        digest: components["schemas"]["Digest"];
        fileId: components["schemas"]["FileId"];
      };
      contentDigest: components["schemas"]["Digest"];
      disposedAt: components["schemas"]["Moment"];
      id: components["schemas"]["DispositionId"];
      markDigest: components["schemas"]["Digest"];
      markId: components["schemas"]["MarkId"];
      number: number;
      reason: unknown;
      resultDigest: components["schemas"]["Digest"];
      revision: components["schemas"]["RevisionLetter"];
    };
    MarkDispositionNow: {
      disposition: components["schemas"]["MarkDisposition"];
      standing: components["schemas"]["Standing"];
      stands: boolean;
    };
    MarkFact:
      | {
          heaviestPostKn: number;
          /** @constant */
          kind: "borne-on-fittings";
        }
      | {
          bearingKn: number;
          heldBy?: number | undefined;
          heldDownKn?: number | undefined;
          /** @constant */
          kind: "overhang";
          lengthMm: number;
          tailReactionKn: number;
          towards: components["schemas"]["CompassPoint"];
        }
      | {
          crossings: {
            at: components["schemas"]["PointMm"];
            forceKn: number;
            gapMm: number;
            seatId?: components["schemas"]["ElementId"] | undefined;
            toNearestFittingMm: number;
          }[];
          /** @constant */
          kind: "borne-on-rail";
          turned: boolean;
        }
      | {
          corners?: number | undefined;
          drawn?: number | undefined;
          /** @constant */
          kind: "made-connection";
          offsetMm: number;
          /** @enum {string} */
          why: "apertures cross" | "hole centres apart" | "bears off the corner";
        }
      | {
          dropMm: number;
          fitting: components["schemas"]["FittingName"];
          /** @constant */
          kind: "corner-on-air";
          /** @enum {string} */
          over: "air" | "sheet";
        }
      | {
          heldBy?: number | undefined;
          heldDownKn?: number | undefined;
          /** @constant */
          kind: "tips-over";
          momentKnm: number;
          outsideMm: number;
          towards: components["schemas"]["CompassPoint"];
          weightKn: number;
          /** @constant */
          whenEmpty?: true | undefined;
        }
      | {
          insideMm: number;
          /** @constant */
          kind: "near-tipping";
          towards: components["schemas"]["CompassPoint"];
          weightKn: number;
          /** @constant */
          whenEmpty?: true | undefined;
        }
      | {
          gapMm: number;
          /** @constant */
          kind: "rocks";
        }
      | {
          gapMm: number;
          /** @constant */
          kind: "stands-clear";
          places: number;
        }
      | {
          corners: number;
          /** @constant */
          kind: "off-its-pad";
          pastMm: number;
        }
      | {
          /** @enum {string} */
          direction: "slides" | "turns" | "falls" | "lifts";
          heldBy?: number | undefined;
          heldDownKn?: number | undefined;
          /** @constant */
          kind: "mechanism";
        }
      | {
          depthMm: number;
          /** @constant */
          kind: "collision";
        }
      | {
          /** @enum {string} */
          cut?: ("in the yard" | "after placing" | "after shoring") | undefined;
          face: components["schemas"]["Face"];
          /** @constant */
          kind: "member-cut";
          member: components["schemas"]["MemberName"];
        }
      | {
          forceKn: number;
          /** @constant */
          kind: "load-over-opening";
          railCut: boolean;
        }
      | {
          bareMm?: number | undefined;
          /** @enum {string} */
          cut?: ("in the yard" | "after placing" | "after shoring") | undefined;
          cutShare: number;
          face: components["schemas"]["Face"];
          /** @constant */
          kind: "opening-in-sheet";
          shortestPierMm: number;
          toDoorPostMm: number;
          toFrontPostMm: number;
          /** @enum {string} */
          wallRule:
            | "keeps both"
            | "more than half cut"
            | "pier under 4 ft"
            | "more than half cut and pier under 4 ft"
            | "not a wall";
          widthMm: number;
        }
      | {
          /** @enum {string} */
          cut?: ("in the yard" | "after placing" | "after shoring") | undefined;
          face: components["schemas"]["Face"];
          joins: boolean;
          /** @constant */
          kind: "wall-out";
          wall?: components["schemas"]["WallFacts"] | undefined;
          widthMm: number;
        }
      | {
          /** @constant */
          kind: "openings-overlap";
        }
      | {
          face: components["schemas"]["Face"];
          /** @constant */
          kind: "opening-off-face";
        }
      | {
          /** @enum {string} */
          by: "roof" | "floor";
          clearMm: number;
          /** @constant */
          kind: "hatch-blocked";
        }
      | {
          count: number;
          /** @enum {string} */
          cut?: ("in the yard" | "after placing" | "after shoring") | undefined;
          /** @constant */
          kind: "cross-members-cut";
        }
      | {
          /** @constant */
          kind: "post-without-ground";
          /** @enum {string} */
          under: "air" | "rail" | "sheet" | "ground";
        }
      | {
          /** @constant */
          kind: "post-holds-nothing";
        }
      | {
          forceKn: number;
          holds: components["schemas"]["ElementId"][];
          /** @constant */
          kind: "post-carries";
        }
      | {
          /** @enum {string} */
          end: "head" | "foot";
          /** @constant */
          kind: "post-off-centre";
          momentKnm: number;
          offsetMm: number;
        }
      | {
          /** @constant */
          kind: "post-through-opening";
        }
      | {
          /** @constant */
          kind: "post-through-unit";
          through: components["schemas"]["MemberName"] | ("roof" | "floor");
        }
      | {
          depthMm: number;
          /** @constant */
          kind: "below-ground";
        }
      | {
          corners: number;
          /** @constant */
          kind: "pad-missing";
        }
      | {
          /** @constant */
          kind: "pad-holds-nothing";
        }
      | {
          aboveMm: number;
          /** @constant */
          kind: "pad-off-ground";
        }
      | {
          /** @constant */
          kind: "below-not-settled";
        }
      | {
          /** @constant */
          kind: "overstressed";
          more: number;
          parts: components["schemas"]["JudgedPart"][];
        }
      | {
          /** @constant */
          kind: "strength-open";
          more: number;
          others: (
            | "wind outside its limits"
            | "no earthquake system"
            | "irregular against earthquakes"
            | "no wall of its own counts sideways"
            | "left out of the model"
            | "no equilibrium even held"
          )[];
          parts: {
            check: string;
            envelope?:
              | {
                  least: number;
                  leastIn: string;
                  most: number | null;
                  mostIn: string;
                }
              | undefined;
            ifProved?: number | undefined;
            part: string;
            partId: string;
            place: string;
            run: string;
            upperBound?: number | undefined;
            utilisation: number | null;
            /** @enum {string} */
            why:
              | "an assumption decides"
              | "beyond its lower bound"
              | "no strength stated"
              | "not covered"
              | "over once held";
            wouldDo?:
              | {
                  depthMm: number;
                  sideMm: number;
                }
              | undefined;
          }[];
          windLimits?:
            | (
                | "rectangular plan"
                | "one roof level"
                | "parallel to the axes"
                | "closed below"
                | "one block"
                | "rigid"
                | "height for components"
              )[]
            | undefined;
        }
      | {
          governing: components["schemas"]["JudgedPart"];
          /** @constant */
          kind: "strength-adequate";
          parts: number;
          /** @enum {string} */
          under: "gravity loads only" | "all loads";
        }
      | {
          forceKn: number;
          /** @constant */
          kind: "uplift";
          places: string[];
          run: string;
        }
      | {
          forceKn: number;
          frictionKn: number;
          /** @constant */
          kind: "slides";
          places: string[];
          run: string;
        }
      | {
          /** @constant */
          kind: "no-lateral-wall";
          walls: {
            /** @enum {string} */
            face: "left" | "right" | "front" | "door";
            fails: string[];
          }[];
          /** @enum {string} */
          way: "lengthwise" | "crosswise";
        }
      | {
          forceKn: number;
          gapMm: number;
          /** @constant */
          kind: "borne-on-beam";
          offAxisMm: number;
          places: number;
        }
      | {
          forceKn: number;
          holds: components["schemas"]["ElementId"][];
          /** @constant */
          kind: "beam-carries";
          momentKnm: number;
          spanMm: number;
        }
      | {
          /** @constant */
          kind: "beam-holds-nothing";
        }
      | {
          /** @constant */
          kind: "beam-end-without-support";
          pastMm: number;
          supports: number;
        }
      | {
          /** @constant */
          kind: "beam-lifts";
          tips: boolean;
          upliftKn: number;
        }
      | {
          /** @constant */
          kind: "beam-through-unit";
          through: components["schemas"]["MemberName"] | "sheet";
        }
      | {
          /** @constant */
          kind: "seat-without-bearing";
          /** @enum {string} */
          lacks: "a member under it" | "a whole rail under it" | "a member over it" | "both";
        }
      | {
          gapMm: number;
          /** @constant */
          kind: "seat-packing";
          leftMm: number;
          packingMm: number;
        }
      | {
          /** @constant */
          kind: "seat-off-rail";
          offMm: number;
          pastMm: number;
        }
      | {
          gapMm: number;
          /** @constant */
          kind: "tie-joins";
          meets: [
            "corner fitting" | "corner post" | "top rail" | "bottom rail",
            "corner fitting" | "corner post" | "top rail" | "bottom rail",
          ];
          upright: boolean;
        }
      | {
          awayMm: number;
          /** @constant */
          kind: "tie-cannot-serve";
          /** @enum {string} */
          why: "out of reach" | "not side by side" | "on sheet" | "in an opening";
        }
      | {
          /** @constant */
          kind: "lock-cannot-serve";
          /** @enum {string} */
          lockKind: "lock" | "made connection" | "hold-down";
          offsetMm: number;
          /** @enum {string} */
          why:
            | "apertures cross"
            | "hole centres apart"
            | "bears off the corner"
            | "gap to pack"
            | "not on a fitting"
            | "not on a pad"
            | "on bare ground"
            | "nothing under it"
            | "joined already";
        }
      | {
          /** @constant */
          kind: "section-unknown";
          name: string;
          /** @enum {string} */
          part: "post" | "beam" | "jamb" | "header" | "sill" | "override";
        }
      | {
          /** @constant */
          kind: "override-misfits";
          member?: components["schemas"]["MemberName"] | undefined;
          /** @enum {string} */
          why: "names no part" | "has no such part" | "said twice";
        }
      | {
          /** @constant */
          kind: "load-off-unit";
          pastMm: number;
          /** @enum {string} */
          surface: "floor" | "roof";
        };
    MarkId: string;
    MarkIdInput: string;
    MeasuredThickness: {
      member: components["schemas"]["MemberName"];
      thicknessUm: components["schemas"]["PositiveLengthUm"];
    };
    MeasuredThicknessInput: {
      member: components["schemas"]["MemberNameInput"];
      thicknessUm: components["schemas"]["PositiveLengthUmInput"];
    };
    MeetConditionInput: {
      id: components["schemas"]["StepIdInput"];
      text: string;
    };
    Member: {
      id: components["schemas"]["PersonId"];
      name: string;
      roles: components["schemas"]["Role"][];
    };
    /** @enum {string} */
    MemberName:
      | "corner post"
      | "top side rail"
      | "bottom side rail"
      | "top end rail"
      | "bottom end rail"
      | "door header"
      | "door sill"
      | "cross member"
      | "corner fitting";
    /** @enum {string} */
    MemberNameInput:
      | "corner post"
      | "top side rail"
      | "bottom side rail"
      | "top end rail"
      | "bottom end rail"
      | "door header"
      | "door sill"
      | "cross member"
      | "corner fitting";
    MemoryValue: string;
    MemoryValueInput: string;
    /** Format: date-time */
    Moment: string;
    /** Format: date-time */
    MomentInput: string;
    NameChangeInput: {
      name: string;
    };
    NewAccessTokenInput: {
      days: number;
      name: string;
      scopes: components["schemas"]["TokenScopeInput"][];
    };
    NewAnswerInput: {
      answer: components["schemas"]["AnswerInput"];
      contentDigest: components["schemas"]["DigestInput"];
      id: components["schemas"]["StepIdInput"];
      resultDigest: components["schemas"]["DigestInput"];
      revision: components["schemas"]["RevisionLetterInput"];
    };
    NewCheckInput: {
      contentDigest: components["schemas"]["DigestInput"];
      id: components["schemas"]["CheckIdInput"];
      /** @enum {string} */
      outcome: "agrees" | "points open";
      points: components["schemas"]["NewConditionInput"][];
      resultDigest: components["schemas"]["DigestInput"];
      revision: components["schemas"]["RevisionLetterInput"];
      text: string;
    };
    NewCommentStepInput:
      | {
          /** Format: uuid */
          id: string;
          /** @constant */
          step: "assigned";
          to: components["schemas"]["PersonIdInput"];
        }
      | {
          detail: string | null;
          form: components["schemas"]["ReplyFormInput"];
          /** Format: uuid */
          id: string;
          page: string | null;
          revision: components["schemas"]["RevisionLetterInput"];
          sheet: string;
          /** @constant */
          step: "answered";
          text: string;
        }
      | {
          /** Format: uuid */
          id: string;
          /** @constant */
          step: "closed";
        }
      | {
          /** Format: uuid */
          id: string;
          /** @constant */
          step: "opened again";
          why: string;
        };
    NewCondition: {
      id: components["schemas"]["ConditionId"];
      owedBy: components["schemas"]["OwingRole"];
      text: unknown;
    };
    NewConditionInput: {
      id: components["schemas"]["ConditionIdInput"];
      owedBy: components["schemas"]["OwingRoleInput"];
      text: string;
    };
    NewConfirmationInput: {
      against: string;
      id: components["schemas"]["ConfirmationIdInput"];
      values: components["schemas"]["MemoryValueInput"][];
    };
    NewDecisionInput: {
      contentDigest: components["schemas"]["DigestInput"];
      costBookDigest: components["schemas"]["DigestInput"];
      /** @enum {string} */
      decision: "agree" | "decline";
      id: components["schemas"]["DecisionIdInput"];
      premiumDigest: components["schemas"]["DigestInput"];
      reason: string | null;
      requestId: components["schemas"]["RequestIdInput"] | null;
      revision: components["schemas"]["RevisionLetterInput"];
    };
    NewInspectionInput: {
      damages: components["schemas"]["DamageInput"][];
      day: components["schemas"]["DayInput"];
      floor: string | null;
      id: components["schemas"]["StepIdInput"];
      measuredWith: string | null;
      photos: components["schemas"]["PhotoInput"][];
      plate: components["schemas"]["PlateFactsInput"];
      /** @constant */
      step: "inspected";
      text: string | null;
      thicknesses: components["schemas"]["MeasuredThicknessInput"][];
    };
    NewInvitationInput: {
      /** Format: email */
      email: string;
      partEndsAt: components["schemas"]["MomentInput"] | null;
      role: components["schemas"]["RoleInput"];
    };
    NewJudgementInput: {
      id: components["schemas"]["StepIdInput"];
      outcome: components["schemas"]["SurveyJudgementInput"];
      /** @constant */
      step: "judged";
      text: string | null;
    };
    NewMarkDispositionInput: {
      calculation: {
        digest: components["schemas"]["DigestInput"];
        fileId: components["schemas"]["FileIdInput"];
      };
      contentDigest: components["schemas"]["DigestInput"];
      id: components["schemas"]["DispositionIdInput"];
      markId: components["schemas"]["MarkIdInput"];
      reason: string;
      resultDigest: components["schemas"]["DigestInput"];
      revision: components["schemas"]["RevisionLetterInput"];
    };
    NewNoteInput: {
      answers: components["schemas"]["NoteIdInput"] | null;
      elementId: components["schemas"]["ElementIdInput"];
      id: components["schemas"]["NoteIdInput"];
      markId: components["schemas"]["MarkIdInput"] | null;
      revision: components["schemas"]["RevisionLetterInput"] | null;
      text: string;
    };
    NewOptionInput: {
      contentDigest: components["schemas"]["DigestInput"];
      draftNumber: number;
      id: components["schemas"]["OptionIdInput"];
      name: string;
    };
    NewOptionSetInput: {
      id: components["schemas"]["OptionSetIdInput"];
      name: string;
    };
    NewPickInput: {
      contentDigest: components["schemas"]["DigestInput"];
      id: components["schemas"]["StepIdInput"];
      optionId: components["schemas"]["OptionIdInput"];
      reason: string | null;
    };
    NewPositionInput:
      | {
          elementId: components["schemas"]["ElementIdInput"];
          id: components["schemas"]["StepIdInput"];
          /** @constant */
          step: "assigned";
        }
      | {
          id: components["schemas"]["StepIdInput"];
          /** @constant */
          step: "released";
          text: string;
        };
    NewQuestionInput: {
      elementId: components["schemas"]["ElementIdInput"];
      id: components["schemas"]["QuestionIdInput"];
      mayGive: string | null;
      neededBy: components["schemas"]["DayInput"];
      revision: components["schemas"]["RevisionLetterInput"];
      view: components["schemas"]["QuestionViewInput"];
      wanted: string;
    };
    NewQuestionStepInput:
      | {
          id: components["schemas"]["StepIdInput"];
          /** @constant */
          step: "information given";
          text: string;
        }
      | {
          id: components["schemas"]["StepIdInput"];
          /** @constant */
          step: "closed";
        }
      | {
          id: components["schemas"]["StepIdInput"];
          /** @constant */
          step: "reopened";
          text: string;
        };
    NewReaderLinkInput: {
      expiresAt: components["schemas"]["MomentInput"];
      name: string;
    };
    NewRequestInput: {
      contentDigest: components["schemas"]["DigestInput"];
      id: components["schemas"]["RequestIdInput"];
      operations: components["schemas"]["OperationInput"][];
      revision: components["schemas"]["RevisionLetterInput"];
      text: string;
    };
    NewRevisionInput: {
      contentDigest: components["schemas"]["DigestInput"];
      draftNumber: number;
      id: components["schemas"]["RevisionIdInput"];
      remark: string | null;
    };
    NewSealedCopyInput: {
      digest: components["schemas"]["DigestInput"];
      fileId: components["schemas"]["FileIdInput"];
      id: components["schemas"]["StepIdInput"];
    };
    NewSealIssueInput: {
      contentDigest: components["schemas"]["DigestInput"];
      id: components["schemas"]["SealIssueIdInput"];
      resultDigest: components["schemas"]["DigestInput"];
      revision: components["schemas"]["RevisionLetterInput"];
    };
    NewSiteJudgementInput:
      | {
          id: components["schemas"]["SiteWordIdInput"];
          key: components["schemas"]["SiteItemKeyInput"];
          revision: components["schemas"]["RevisionLetterInput"];
          /** @constant */
          says: "accepted";
          text: string;
        }
      | {
          id: components["schemas"]["SiteWordIdInput"];
          key: components["schemas"]["SiteItemKeyInput"];
          revision: components["schemas"]["RevisionLetterInput"];
          /** @constant */
          says: "to mend";
          text: string;
        }
      | {
          id: components["schemas"]["SiteWordIdInput"];
          key: components["schemas"]["SiteItemKeyInput"];
          revision: components["schemas"]["RevisionLetterInput"];
          /** @constant */
          says: "reopened";
          text: string;
        };
    NewSiteWordInput:
      | {
          id: components["schemas"]["SiteWordIdInput"];
          key: components["schemas"]["SiteItemKeyInput"];
          photos: components["schemas"]["PhotoInput"][];
          revision: components["schemas"]["RevisionLetterInput"];
          /** @constant */
          says: "built";
          text: string | null;
        }
      | {
          id: components["schemas"]["SiteWordIdInput"];
          key: components["schemas"]["SiteItemKeyInput"];
          photos: components["schemas"]["PhotoInput"][];
          revision: components["schemas"]["RevisionLetterInput"];
          /** @constant */
          says: "differs";
          text: string;
        }
      | {
          id: components["schemas"]["SiteWordIdInput"];
          key: components["schemas"]["SiteItemKeyInput"];
          photos: components["schemas"]["PhotoInput"][];
          revision: components["schemas"]["RevisionLetterInput"];
          /** @constant */
          says: "missing";
          text: string;
        };
    NewStampInput: {
      conditions?: components["schemas"]["NewConditionInput"][] | undefined;
      contentDigest: components["schemas"]["DigestInput"];
      disposition: components["schemas"]["DispositionInput"];
      elementId?: components["schemas"]["ElementIdInput"] | undefined;
      id: components["schemas"]["StampIdInput"];
      resultDigest: components["schemas"]["DigestInput"];
      revision: components["schemas"]["RevisionLetterInput"];
      text: string;
    };
    NewSurveyedContainerInput: {
      containerNumber: string;
      id: components["schemas"]["SurveyedContainerIdInput"];
      type: components["schemas"]["ContainerTypeInput"];
    };
    NewSurveyLimitsInput: {
      id: components["schemas"]["SurveyLimitsIdInput"];
      limits: components["schemas"]["SurveyLimitsInput"];
    };
    NewWebhookInput: {
      /** Format: uri */
      url: string;
    };
    NewWithdrawalInput: {
      id: components["schemas"]["StepIdInput"];
      reason: string | null;
    };
    Note: {
      answers: components["schemas"]["NoteId"] | null;
      author: components["schemas"]["Author"];
      elementId: components["schemas"]["ElementId"];
      id: components["schemas"]["NoteId"];
      markId: string | null;
      revision: components["schemas"]["RevisionLetter"] | null;
      settledAt: components["schemas"]["Moment"] | null;
      text: string;
      writtenAt: components["schemas"]["Moment"];
    };
    /** Format: uuid */
    NoteId: string;
    /** Format: uuid */
    NoteIdInput: string;
    Notice: {
      entry: components["schemas"]["RecordEntry"];
      projectId: components["schemas"]["ProjectId"];
      projectName: string;
      seen: boolean;
    };
    Notices: {
      notices: components["schemas"]["Notice"][];
      unseen: number;
    };
    NoticeSetting: {
      /** @enum {string} */
      letters: "none" | "at once" | "daily";
    };
    NoticeSettingInput: {
      /** @enum {string} */
      letters: "none" | "at once" | "daily";
    };
    NoticesSeenInput: {
      upTo: number;
    };
    /** @enum {string} */
    Occupancy:
      | "dwelling"
      | "sleeping room"
      | "hotel room"
      | "public corridor"
      | "office"
      | "lobby"
      | "corridor above ground floor"
      | "retail, ground floor"
      | "retail, upper floor"
      | "retail, wholesale"
      | "assembly, fixed seats"
      | "assembly, movable seats"
      | "dining"
      | "classroom"
      | "stair"
      | "light storage"
      | "heavy storage"
      | "roof"
      | "roof garden"
      | "balcony or deck";
    /** @enum {string} */
    OccupancyInput:
      | "dwelling"
      | "sleeping room"
      | "hotel room"
      | "public corridor"
      | "office"
      | "lobby"
      | "corridor above ground floor"
      | "retail, ground floor"
      | "retail, upper floor"
      | "retail, wholesale"
      | "assembly, fixed seats"
      | "assembly, movable seats"
      | "dining"
      | "classroom"
      | "stair"
      | "light storage"
      | "heavy storage"
      | "roof"
      | "roof garden"
      | "balcony or deck";
    OpenedLink:
      | {
          /** @enum {string} */
          account: "none" | "known" | "signed-in";
          email: string;
          invitedBy: string;
          /** @constant */
          kind: "invitation";
          projectName: string;
          role: components["schemas"]["Role"];
        }
      | {
          expiresAt: components["schemas"]["Moment"];
          /** @constant */
          kind: "reader-link";
          madeBy: string;
          name: string;
          projectName: string;
          signedInAs: string | null;
        }
      | {
          /** @constant */
          kind: "first-administrator";
        }
      | {
          email: string;
          /** @constant */
          kind: "new-password";
          name: string;
        };
    Opening: {
      containerId: components["schemas"]["ElementId"];
      /** @enum {string} */
      cut?: ("after placing" | "after shoring") | undefined;
      face: components["schemas"]["Face"];
      framed: boolean;
      framing?: components["schemas"]["Framing"] | undefined;
      heightUm: components["schemas"]["PositiveLengthUm"];
      id: components["schemas"]["ElementId"];
      offsetUm: components["schemas"]["LengthUm"];
      sillUm: components["schemas"]["LengthUm"];
      tag: components["schemas"]["Tag"];
      use: components["schemas"]["OpeningUse"];
      widthUm: components["schemas"]["PositiveLengthUm"];
    };
    OpeningInput: {
      containerId: components["schemas"]["ElementIdInput"];
      /** @enum {string} */
      cut?: ("after placing" | "after shoring") | undefined;
      face: components["schemas"]["FaceInput"];
      framed: boolean;
      framing?: components["schemas"]["FramingInput"] | undefined;
      heightUm: components["schemas"]["PositiveLengthUmInput"];
      id: components["schemas"]["ElementIdInput"];
      offsetUm: components["schemas"]["LengthUmInput"];
      sillUm: components["schemas"]["LengthUmInput"];
      tag: components["schemas"]["TagInput"];
      use: components["schemas"]["OpeningUseInput"];
      widthUm: components["schemas"]["PositiveLengthUmInput"];
    };
    /** @enum {string} */
    OpeningUse: "door" | "window" | "passage" | "open-wall" | "hatch";
    /** @enum {string} */
    OpeningUseInput: "door" | "window" | "passage" | "open-wall" | "hatch";
    OpenLinkInput: {
      secret: string;
    };
    Operation:
      | {
          container: components["schemas"]["Container"];
          /** @constant */
          kind: "container.place";
        }
      | {
          id: components["schemas"]["ElementId"];
          /** @constant */
          kind: "container.move";
          xUm: components["schemas"]["LengthUm"];
          yUm: components["schemas"]["LengthUm"];
          zUm: components["schemas"]["LengthUm"];
        }
      | {
          id: components["schemas"]["ElementId"];
          /** @constant */
          kind: "container.turn";
          turnMdeg: components["schemas"]["AngleMdeg"];
        }
      | {
          id: components["schemas"]["ElementId"];
          /** @constant */
          kind: "container.retype";
          type: components["schemas"]["ContainerType"];
        }
      | {
          id: components["schemas"]["ElementId"];
          /** @constant */
          kind: "container.remove";
        }
      | {
          /** @constant */
          kind: "opening.cut";
          opening: components["schemas"]["Opening"];
        }
      | {
          heightUm: components["schemas"]["PositiveLengthUm"];
          id: components["schemas"]["ElementId"];
          /** @constant */
          kind: "opening.shape";
          offsetUm: components["schemas"]["LengthUm"];
          sillUm: components["schemas"]["LengthUm"];
          widthUm: components["schemas"]["PositiveLengthUm"];
        }
      | {
          framed: boolean;
          id: components["schemas"]["ElementId"];
          /** @constant */
          kind: "opening.dress";
          use: components["schemas"]["OpeningUse"];
        }
      | {
          id: components["schemas"]["ElementId"];
          /** @constant */
          kind: "opening.close";
        }
      | {
          /** @constant */
          kind: "post.set";
          post: components["schemas"]["Post"];
        }
      | {
          id: components["schemas"]["ElementId"];
          /** @constant */
          kind: "post.move";
          xUm: components["schemas"]["LengthUm"];
          yUm: components["schemas"]["LengthUm"];
        }
      | {
          baseZUm: components["schemas"]["LengthUm"];
          id: components["schemas"]["ElementId"];
          /** @constant */
          kind: "post.length";
          topZUm: components["schemas"]["LengthUm"];
        }
      | {
          id: components["schemas"]["ElementId"];
          /** @constant */
          kind: "post.remove";
        }
      | {
          /** @constant */
          kind: "pad.set";
          pad: components["schemas"]["Pad"];
        }
      | {
          id: components["schemas"]["ElementId"];
          /** @constant */
          kind: "pad.move";
          topZUm: components["schemas"]["LengthUm"];
          xUm: components["schemas"]["LengthUm"];
          yUm: components["schemas"]["LengthUm"];
        }
      | {
          id: components["schemas"]["ElementId"];
          /** @constant */
          kind: "pad.remove";
        }
      | {
          /** @constant */
          kind: "load.put";
          load: components["schemas"]["FloorLoad"];
        }
      | {
          id: components["schemas"]["ElementId"];
          /** @constant */
          kind: "load.change";
          pressurePa: components["schemas"]["PressurePa"];
        }
      | {
          id: components["schemas"]["ElementId"];
          /** @constant */
          kind: "load.remove";
        }
      | {
          /** @constant */
          kind: "site.change";
          site: components["schemas"]["Site"];
        }
      | {
          container: components["schemas"]["Container"];
          /** @constant */
          kind: "container.change";
        }
      | {
          /** @constant */
          kind: "opening.change";
          opening: components["schemas"]["Opening"];
        }
      | {
          /** @constant */
          kind: "post.change";
          post: components["schemas"]["Post"];
        }
      | {
          /** @constant */
          kind: "pad.change";
          pad: components["schemas"]["Pad"];
        }
      | {
          beam: components["schemas"]["Beam"];
          /** @constant */
          kind: "beam.set";
        }
      | {
          beam: components["schemas"]["Beam"];
          /** @constant */
          kind: "beam.change";
        }
      | {
          id: components["schemas"]["ElementId"];
          /** @constant */
          kind: "beam.remove";
        }
      | {
          /** @constant */
          kind: "seat.set";
          seat: components["schemas"]["Seat"];
        }
      | {
          /** @constant */
          kind: "seat.change";
          seat: components["schemas"]["Seat"];
        }
      | {
          id: components["schemas"]["ElementId"];
          /** @constant */
          kind: "seat.remove";
        }
      | {
          /** @constant */
          kind: "tie.set";
          tie: components["schemas"]["Tie"];
        }
      | {
          /** @constant */
          kind: "tie.change";
          tie: components["schemas"]["Tie"];
        }
      | {
          id: components["schemas"]["ElementId"];
          /** @constant */
          kind: "tie.remove";
        }
      | {
          /** @constant */
          kind: "lock.set";
          lock: components["schemas"]["Lock"];
        }
      | {
          /** @constant */
          kind: "lock.change";
          lock: components["schemas"]["Lock"];
        }
      | {
          id: components["schemas"]["ElementId"];
          /** @constant */
          kind: "lock.remove";
        }
      | {
          /** @constant */
          kind: "free-load.put";
          load: components["schemas"]["FreeLoad"];
        }
      | {
          /** @constant */
          kind: "free-load.change";
          load: components["schemas"]["FreeLoad"];
        }
      | {
          id: components["schemas"]["ElementId"];
          /** @constant */
          kind: "free-load.remove";
        }
      | {
          /** @constant */
          kind: "use.set";
          use: components["schemas"]["FloorUse"];
        }
      | {
          /** @constant */
          kind: "use.change";
          use: components["schemas"]["FloorUse"];
        }
      | {
          id: components["schemas"]["ElementId"];
          /** @constant */
          kind: "use.remove";
        }
      | {
          /** @constant */
          kind: "override.set";
          override: components["schemas"]["Override"];
        }
      | {
          /** @constant */
          kind: "override.change";
          override: components["schemas"]["Override"];
        }
      | {
          id: components["schemas"]["ElementId"];
          /** @constant */
          kind: "override.remove";
        }
      | {
          basis: components["schemas"]["DesignBasis"];
          /** @constant */
          kind: "basis.change";
        };
    OperationInput:
      | {
          container: components["schemas"]["ContainerInput"];
          /** @constant */
          kind: "container.place";
        }
      | {
          id: components["schemas"]["ElementIdInput"];
          /** @constant */
          kind: "container.move";
          xUm: components["schemas"]["LengthUmInput"];
          yUm: components["schemas"]["LengthUmInput"];
          zUm: components["schemas"]["LengthUmInput"];
        }
      | {
          id: components["schemas"]["ElementIdInput"];
          /** @constant */
          kind: "container.turn";
          turnMdeg: components["schemas"]["AngleMdegInput"];
        }
      | {
          id: components["schemas"]["ElementIdInput"];
          /** @constant */
          kind: "container.retype";
          type: components["schemas"]["ContainerTypeInput"];
        }
      | {
          id: components["schemas"]["ElementIdInput"];
          /** @constant */
          kind: "container.remove";
        }
      | {
          /** @constant */
          kind: "opening.cut";
          opening: components["schemas"]["OpeningInput"];
        }
      | {
          heightUm: components["schemas"]["PositiveLengthUmInput"];
          id: components["schemas"]["ElementIdInput"];
          /** @constant */
          kind: "opening.shape";
          offsetUm: components["schemas"]["LengthUmInput"];
          sillUm: components["schemas"]["LengthUmInput"];
          widthUm: components["schemas"]["PositiveLengthUmInput"];
        }
      | {
          framed: boolean;
          id: components["schemas"]["ElementIdInput"];
          /** @constant */
          kind: "opening.dress";
          use: components["schemas"]["OpeningUseInput"];
        }
      | {
          id: components["schemas"]["ElementIdInput"];
          /** @constant */
          kind: "opening.close";
        }
      | {
          /** @constant */
          kind: "post.set";
          post: components["schemas"]["PostInput"];
        }
      | {
          id: components["schemas"]["ElementIdInput"];
          /** @constant */
          kind: "post.move";
          xUm: components["schemas"]["LengthUmInput"];
          yUm: components["schemas"]["LengthUmInput"];
        }
      | {
          baseZUm: components["schemas"]["LengthUmInput"];
          id: components["schemas"]["ElementIdInput"];
          /** @constant */
          kind: "post.length";
          topZUm: components["schemas"]["LengthUmInput"];
        }
      | {
          id: components["schemas"]["ElementIdInput"];
          /** @constant */
          kind: "post.remove";
        }
      | {
          /** @constant */
          kind: "pad.set";
          pad: components["schemas"]["PadInput"];
        }
      | {
          id: components["schemas"]["ElementIdInput"];
          /** @constant */
          kind: "pad.move";
          topZUm: components["schemas"]["LengthUmInput"];
          xUm: components["schemas"]["LengthUmInput"];
          yUm: components["schemas"]["LengthUmInput"];
        }
      | {
          id: components["schemas"]["ElementIdInput"];
          /** @constant */
          kind: "pad.remove";
        }
      | {
          /** @constant */
          kind: "load.put";
          load: components["schemas"]["FloorLoadInput"];
        }
      | {
          id: components["schemas"]["ElementIdInput"];
          /** @constant */
          kind: "load.change";
          pressurePa: components["schemas"]["PressurePaInput"];
        }
      | {
          id: components["schemas"]["ElementIdInput"];
          /** @constant */
          kind: "load.remove";
        }
      | {
          /** @constant */
          kind: "site.change";
          site: components["schemas"]["SiteInput"];
        }
      | {
          container: components["schemas"]["ContainerInput"];
          /** @constant */
          kind: "container.change";
        }
      | {
          /** @constant */
          kind: "opening.change";
          opening: components["schemas"]["OpeningInput"];
        }
      | {
          /** @constant */
          kind: "post.change";
          post: components["schemas"]["PostInput"];
        }
      | {
          /** @constant */
          kind: "pad.change";
          pad: components["schemas"]["PadInput"];
        }
      | {
          beam: components["schemas"]["BeamInput"];
          /** @constant */
          kind: "beam.set";
        }
      | {
          beam: components["schemas"]["BeamInput"];
          /** @constant */
          kind: "beam.change";
        }
      | {
          id: components["schemas"]["ElementIdInput"];
          /** @constant */
          kind: "beam.remove";
        }
      | {
          /** @constant */
          kind: "seat.set";
          seat: components["schemas"]["SeatInput"];
        }
      | {
          /** @constant */
          kind: "seat.change";
          seat: components["schemas"]["SeatInput"];
        }
      | {
          id: components["schemas"]["ElementIdInput"];
          /** @constant */
          kind: "seat.remove";
        }
      | {
          /** @constant */
          kind: "tie.set";
          tie: components["schemas"]["TieInput"];
        }
      | {
          /** @constant */
          kind: "tie.change";
          tie: components["schemas"]["TieInput"];
        }
      | {
          id: components["schemas"]["ElementIdInput"];
          /** @constant */
          kind: "tie.remove";
        }
      | {
          /** @constant */
          kind: "lock.set";
          lock: components["schemas"]["LockInput"];
        }
      | {
          /** @constant */
          kind: "lock.change";
          lock: components["schemas"]["LockInput"];
        }
      | {
          id: components["schemas"]["ElementIdInput"];
          /** @constant */
          kind: "lock.remove";
        }
      | {
          /** @constant */
          kind: "free-load.put";
          load: components["schemas"]["FreeLoadInput"];
        }
      | {
          /** @constant */
          kind: "free-load.change";
          load: components["schemas"]["FreeLoadInput"];
        }
      | {
          id: components["schemas"]["ElementIdInput"];
          /** @constant */
          kind: "free-load.remove";
        }
      | {
          /** @constant */
          kind: "use.set";
          use: components["schemas"]["FloorUseInput"];
        }
      | {
          /** @constant */
          kind: "use.change";
          use: components["schemas"]["FloorUseInput"];
        }
      | {
          id: components["schemas"]["ElementIdInput"];
          /** @constant */
          kind: "use.remove";
        }
      | {
          /** @constant */
          kind: "override.set";
          override: components["schemas"]["OverrideInput"];
        }
      | {
          /** @constant */
          kind: "override.change";
          override: components["schemas"]["OverrideInput"];
        }
      | {
          id: components["schemas"]["ElementIdInput"];
          /** @constant */
          kind: "override.remove";
        }
      | {
          basis: components["schemas"]["DesignBasisInput"];
          /** @constant */
          kind: "basis.change";
        };
    OptionAnswer:
      | {
          /** @constant */
          state: "waiting";
        }
      | {
          engineVersion: string;
          marks: number;
          resultDigest: components["schemas"]["Digest"];
          /** @enum {string} */
          scope:
            | "load path only, no strength checked"
            | "load path, and strength under gravity loads"
            | "load path, and strength under all loads";
          /** @constant */
          state: "done";
          verdict: components["schemas"]["Verdict"];
        }
      | {
          /** @constant */
          state: "failed";
          why: string;
        }
      | {
          /** @constant */
          state: "unreadable";
        };
    OptionDrawn: {
      contentDigest: components["schemas"]["Digest"];
      id: components["schemas"]["OptionId"];
      scheme: components["schemas"]["Scheme"];
    };
    /** Format: uuid */
    OptionId: string;
    /** Format: uuid */
    OptionIdInput: string;
    OptionNow: {
      answer: components["schemas"]["OptionAnswer"];
      author: components["schemas"]["Author"];
      containers: number;
      contentDigest: components["schemas"]["Digest"];
      id: components["schemas"]["OptionId"];
      keptAt: components["schemas"]["Moment"];
      name: string;
      place: number;
      price: components["schemas"]["OptionPrice"];
      withdrawn: components["schemas"]["OptionWithdrawal"] | null;
    };
    OptionPick: {
      author: components["schemas"]["Author"];
      contentDigest: components["schemas"]["Digest"];
      id: components["schemas"]["StepId"];
      optionId: components["schemas"]["OptionId"];
      pickedAt: components["schemas"]["Moment"];
      reason: string | null;
    };
    OptionPrice: {
      currency: string;
      forShow: boolean;
      standsApart: boolean;
      steelKg: number;
      total: number;
    };
    /** Format: uuid */
    OptionSetId: string;
    /** Format: uuid */
    OptionSetIdInput: string;
    OptionSetNow: {
      author: components["schemas"]["Author"];
      id: components["schemas"]["OptionSetId"];
      name: string;
      number: number;
      openedAt: components["schemas"]["Moment"];
      options: components["schemas"]["OptionNow"][];
      picks: components["schemas"]["OptionPick"][];
    };
    OptionSetOpened: {
      author: components["schemas"]["Author"];
      id: components["schemas"]["OptionSetId"];
      name: string;
      number: number;
      openedAt: components["schemas"]["Moment"];
    };
    OptionWithdrawal: {
      author: components["schemas"]["Author"];
      id: components["schemas"]["StepId"];
      reason: string | null;
      withdrawnAt: components["schemas"]["Moment"];
    };
    Override: {
      elementId: components["schemas"]["ElementId"];
      id: components["schemas"]["ElementId"];
      member?: components["schemas"]["MemberName"] | undefined;
      section?: components["schemas"]["SectionName"] | undefined;
      source: unknown;
      thicknessUm?: components["schemas"]["PositiveLengthUm"] | undefined;
      yieldMpa?: number | undefined;
    };
    OverrideInput: {
      elementId: components["schemas"]["ElementIdInput"];
      id: components["schemas"]["ElementIdInput"];
      member?: components["schemas"]["MemberNameInput"] | undefined;
      section?: components["schemas"]["SectionNameInput"] | undefined;
      source: string;
      thicknessUm?: components["schemas"]["PositiveLengthUmInput"] | undefined;
      yieldMpa?: number | undefined;
    };
    Owed: {
      neededBy: components["schemas"]["Day"] | null;
      number: number;
      owedBy: components["schemas"]["Role"];
      owedTo: components["schemas"]["Role"];
      projectId: components["schemas"]["ProjectId"];
      projectName: string;
      since: components["schemas"]["Moment"];
      text: string;
      /** @enum {string} */
      what:
        | "answer"
        | "information"
        | "question to close"
        | "condition"
        | "condition to close"
        | "change"
        | "price to agree"
        | "container to judge"
        | "container to repair"
        | "survey to draw"
        | "site item to build"
        | "difference to judge";
    };
    /** @enum {string} */
    OwingRole: "architect" | "engineer" | "owner";
    /** @enum {string} */
    OwingRoleInput: "architect" | "engineer" | "owner";
    Pad: {
      depthUm: components["schemas"]["PositiveLengthUm"];
      id: components["schemas"]["ElementId"];
      lengthUm: components["schemas"]["PositiveLengthUm"];
      levelErrorUm?: components["schemas"]["LengthUm"] | undefined;
      settlementUm?: components["schemas"]["LengthUm"] | undefined;
      subgradeKnPerM3?: number | undefined;
      /** @enum {string} */
      support?: ("strip" | "slab") | undefined;
      tag: components["schemas"]["Tag"];
      topZUm: components["schemas"]["LengthUm"];
      turnMdeg: components["schemas"]["AngleMdeg"];
      widthUm: components["schemas"]["PositiveLengthUm"];
      xUm: components["schemas"]["LengthUm"];
      yUm: components["schemas"]["LengthUm"];
    };
    PadInput: {
      depthUm: components["schemas"]["PositiveLengthUmInput"];
      id: components["schemas"]["ElementIdInput"];
      lengthUm: components["schemas"]["PositiveLengthUmInput"];
      levelErrorUm?: components["schemas"]["LengthUmInput"] | undefined;
      settlementUm?: components["schemas"]["LengthUmInput"] | undefined;
      subgradeKnPerM3?: number | undefined;
      /** @enum {string} */
      support?: ("strip" | "slab") | undefined;
      tag: components["schemas"]["TagInput"];
      topZUm: components["schemas"]["LengthUmInput"];
      turnMdeg: components["schemas"]["AngleMdegInput"];
      widthUm: components["schemas"]["PositiveLengthUmInput"];
      xUm: components["schemas"]["LengthUmInput"];
      yUm: components["schemas"]["LengthUmInput"];
    };
    PasswordChangeInput: {
      next: string;
      present: string;
    };
    PathStretch: {
      elementId: components["schemas"]["ElementId"];
      forceFootKn: number;
      forceTopKn: number;
      from: components["schemas"]["PointMm"];
      id: string;
      leavesCorners: boolean;
      member?: components["schemas"]["MemberName"] | undefined;
      to: components["schemas"]["PointMm"];
      /** @enum {string} */
      via: "corner post" | "added post" | "rail" | "beam" | "seat" | "pad";
    };
    PermitSetRun: {
      askedAt: components["schemas"]["Moment"];
      askedBy: components["schemas"]["Author"];
      bytes: number | null;
      doneAt: components["schemas"]["Moment"] | null;
      /** Format: uuid */
      id: string;
      leftMs: number | null;
      letter: components["schemas"]["RevisionLetter"];
      pages: {
        done: number;
        of: number;
      };
      setDigest: components["schemas"]["Digest"] | null;
      /** @enum {string} */
      state: "waiting" | "done" | "refused" | "failed" | "stopped";
      units: components["schemas"]["Units"];
      upTo: number;
      why: string | null;
    };
    /** Format: uuid */
    PersonId: string;
    /** Format: uuid */
    PersonIdInput: string;
    Photo: {
      digest: components["schemas"]["Digest"];
      fileId: components["schemas"]["FileId"];
    };
    PhotoInput: {
      digest: components["schemas"]["DigestInput"];
      fileId: components["schemas"]["FileIdInput"];
    };
    PlanCheckComment: {
      about: string | null;
      assignedTo: {
        id: components["schemas"]["PersonId"];
        name: string;
      } | null;
      broughtInAt: components["schemas"]["Moment"];
      broughtInBy: components["schemas"]["Author"];
      closed: {
        at: components["schemas"]["Moment"];
        by: components["schemas"]["Author"];
      } | null;
      discipline: string | null;
      /** Format: uuid */
      id: string;
      number: string;
      order: number;
      reply: {
        at: components["schemas"]["Moment"];
        by: components["schemas"]["Author"];
        detail: unknown | null;
        form: components["schemas"]["ReplyForm"];
        page: unknown | null;
        revision: components["schemas"]["RevisionLetter"];
        sheet: unknown;
        text: unknown;
      } | null;
      /** @enum {string} */
      state: "open" | "answered" | "closed";
      text: string;
    };
    PlanCheckRegister: {
      comments: components["schemas"]["PlanCheckComment"][];
      count: {
        answered: number;
        closed: number;
        in: number;
        open: number;
      };
    };
    PlateFacts: {
      approvalNumber: unknown | null;
      madeIn: string | null;
      maxGrossKg: number;
      rackingN: number | null;
      stackingKg: number;
      tareKg: number | null;
    };
    PlateFactsInput: {
      approvalNumber: string | null;
      madeIn: string | null;
      maxGrossKg: number;
      rackingN: number | null;
      stackingKg: number;
      tareKg: number | null;
    };
    PointMm: {
      xMm: number;
      yMm: number;
      zMm: number;
    };
    PositiveLengthUm: number;
    PositiveLengthUmInput: number;
    Post: {
      baseZUm: components["schemas"]["LengthUm"];
      id: components["schemas"]["ElementId"];
      levelErrorUm?: components["schemas"]["LengthUm"] | undefined;
      section: components["schemas"]["SectionName"];
      tag: components["schemas"]["Tag"];
      topZUm: components["schemas"]["LengthUm"];
      turnMdeg: components["schemas"]["AngleMdeg"];
      xUm: components["schemas"]["LengthUm"];
      yUm: components["schemas"]["LengthUm"];
    };
    PostInput: {
      baseZUm: components["schemas"]["LengthUmInput"];
      id: components["schemas"]["ElementIdInput"];
      levelErrorUm?: components["schemas"]["LengthUmInput"] | undefined;
      section: components["schemas"]["SectionNameInput"];
      tag: components["schemas"]["TagInput"];
      topZUm: components["schemas"]["LengthUmInput"];
      turnMdeg: components["schemas"]["AngleMdegInput"];
      xUm: components["schemas"]["LengthUmInput"];
      yUm: components["schemas"]["LengthUmInput"];
    };
    Premium: {
      currency: string;
      forShow: boolean;
      lines: components["schemas"]["PremiumLine"][];
      marks: {
        markId: string;
        money: number | null;
        verdict: components["schemas"]["Verdict"];
      }[];
      notPriced: string[];
      quantities: components["schemas"]["PremiumQuantities"];
      total: number;
      units: {
        containerId: string | null;
        money: number;
      }[];
    };
    PremiumDifference: {
      after: components["schemas"]["RevisionLetter"];
      before: components["schemas"]["RevisionLetter"];
      costBook: components["schemas"]["PricedWith"];
      currency: string;
      forShow: boolean;
      lines: components["schemas"]["DifferentLine"][];
      notPriced: string[];
      totalAfter: number;
      totalBefore: number;
    };
    PremiumLine: {
      containerId: string | null;
      elementId: string;
      forShow: boolean;
      hours: number;
      hoursAt:
        | (
            | "shop hour"
            | "site hour"
            | "engineering hour"
            | "crane hour"
            | "steel, kg in place"
            | "lock, each"
            | "anchor, each"
            | "pad, each"
            | "pad concrete, m³"
          )
        | null;
      /** @enum {string} */
      item:
        | "cut"
        | "paint repair"
        | "weld of 5 mm"
        | "steel"
        | "lock"
        | "anchor"
        | "pad"
        | "pad concrete"
        | "crane lift"
        | "engineering";
      money: number;
      piecesAt:
        | (
            | "shop hour"
            | "site hour"
            | "engineering hour"
            | "crane hour"
            | "steel, kg in place"
            | "lock, each"
            | "anchor, each"
            | "pad, each"
            | "pad concrete, m³"
          )
        | null;
      quantity: number;
      section: string | null;
      /** @enum {string} */
      unit: "m" | "kg" | "m³" | "each";
      /** @enum {string} */
      where: "shop" | "site";
    };
    PremiumQuantities: {
      connections: {
        count: number;
        /** @enum {string} */
        kind: "lock" | "hold-down" | "made connection" | "seat" | "tie";
      }[];
      craneLifts: number;
      cutM: number;
      hours: {
        crane: number;
        engineering: number;
        shop: number;
        site: number;
      };
      padConcreteM3: number;
      pads: number;
      steelKg: {
        massKg: number;
        section: string;
      }[];
      weldM: {
        legMm: number;
        lengthM: number;
      }[];
    };
    PressStampInput: {
      password: string;
      stamp: components["schemas"]["NewStampInput"];
    };
    PressurePa: number;
    PressurePaInput: number;
    PricedWith: {
      digest: components["schemas"]["Digest"];
      number: number;
    };
    Problem: {
      code: string;
      conflict?:
        | {
            draftNumber: number;
            elements: string[];
            mine: components["schemas"]["Operation"][];
            theirs: {
              by: string;
              draftNumber: number;
              operations: components["schemas"]["Operation"][];
            }[];
          }
        | undefined;
      detail?: string | undefined;
      fields?: components["schemas"]["FieldProblem"][] | undefined;
      requestId?: string | undefined;
      status: number;
      title: string;
      type: string;
    };
    Project: {
      awaitsConfirmation: boolean;
      client: string;
      containers: number;
      engineerToConfirm: boolean;
      id: components["schemas"]["ProjectId"];
      last: number;
      members: components["schemas"]["Member"][];
      name: string;
      place: string;
      revision: components["schemas"]["RevisionLetter"] | null;
      roles: components["schemas"]["Role"][];
      since: components["schemas"]["Moment"] | null;
      stamp: components["schemas"]["Stamp"] | null;
      verdict: components["schemas"]["Verdict"];
      waitsFor: components["schemas"]["Role"] | null;
    };
    ProjectAuthority: {
      profile: components["schemas"]["AuthorityProfile"];
      set: {
        at: components["schemas"]["Moment"];
        by: string;
      } | null;
    };
    ProjectCostBook: {
      book: components["schemas"]["CostBook"];
      changed: {
        at: components["schemas"]["Moment"];
        by: components["schemas"]["Author"];
      } | null;
      digest: components["schemas"]["Digest"];
      number: number;
    };
    /** Format: uuid */
    ProjectId: string;
    /** Format: uuid */
    ProjectIdInput: string;
    ProjectMember: {
      email: string | null;
      id: components["schemas"]["PersonId"];
      licence: components["schemas"]["Licence"] | null;
      name: string;
      parts: components["schemas"]["HeldPart"][];
    };
    ProjectPeople: {
      acts: (
        | "draw"
        | "send-revision"
        | "run-assessment"
        | "write-note"
        | "settle-note"
        | "make-request"
        | "answer-request"
        | "press-stamp"
        | "read-prices"
        | "keep-cost-book"
        | "decide"
        | "keep-options"
        | "pick-option"
        | "ask-question"
        | "answer-question"
        | "meet-condition"
        | "judge-condition"
        | "check-revision"
        | "dispose-mark"
        | "confirm-value"
        | "issue-for-seal"
        | "keep-file"
        | "survey-container"
        | "judge-container"
        | "assign-container"
        | "close-site-item"
        | "judge-site-item"
        | "print-set"
        | "keep-comments"
        | "answer-comment"
        | "close-comment"
        | "read-draft"
        | "read-revisions"
        | "read-record"
        | "read-people"
        | "leave-project"
        | "invite"
        | "confirm-engineer"
        | "remove-person"
        | "set-expiry"
        | "keep-webhooks"
        | "take-archive"
      )[];
      invitations: components["schemas"]["Invitation"][];
      members: components["schemas"]["ProjectMember"][];
      project: {
        id: components["schemas"]["ProjectId"];
        name: string;
        place: string;
      };
      readerLinks: components["schemas"]["ReaderLink"][];
    };
    ProjectStarted: {
      id: components["schemas"]["ProjectId"];
    };
    ProjectSummary: {
      awaitsConfirmation: boolean;
      client: string;
      containers: number;
      engineerToConfirm: boolean;
      id: components["schemas"]["ProjectId"];
      last: number;
      name: string;
      place: string;
      revision: components["schemas"]["RevisionLetter"] | null;
      roles: components["schemas"]["Role"][];
      since: components["schemas"]["Moment"] | null;
      stamp: components["schemas"]["Stamp"] | null;
      verdict: components["schemas"]["Verdict"];
      waitsFor: components["schemas"]["Role"] | null;
    };
    ProjectSurveyLimits: {
      author: components["schemas"]["Author"];
      id: components["schemas"]["SurveyLimitsId"];
      limits: components["schemas"]["SurveyLimits"];
      number: number;
      setAt: components["schemas"]["Moment"];
    };
    PublicKey: string;
    Question: {
      askedAt: components["schemas"]["Moment"];
      author: components["schemas"]["Author"];
      elementId: components["schemas"]["ElementId"];
      id: components["schemas"]["QuestionId"];
      mayGive: unknown | null;
      neededBy: components["schemas"]["Day"];
      number: number;
      revision: components["schemas"]["RevisionLetter"];
      steps: components["schemas"]["QuestionStep"][];
      view: components["schemas"]["QuestionView"];
      wanted: unknown;
    };
    /** Format: uuid */
    QuestionId: string;
    /** Format: uuid */
    QuestionIdInput: string;
    QuestionNow: {
      askedAt: components["schemas"]["Moment"];
      author: components["schemas"]["Author"];
      elementId: components["schemas"]["ElementId"];
      id: components["schemas"]["QuestionId"];
      mayGive: unknown | null;
      neededBy: components["schemas"]["Day"];
      number: number;
      owedBy: components["schemas"]["Role"] | null;
      revision: components["schemas"]["RevisionLetter"];
      standing: components["schemas"]["Standing"] | null;
      state: components["schemas"]["QuestionState"];
      steps: components["schemas"]["QuestionStep"][];
      view: components["schemas"]["QuestionView"];
      wanted: unknown;
    };
    /** @enum {string} */
    QuestionState: "asked" | "needs information" | "answered" | "stale" | "closed";
    QuestionStep:
      | {
          answer: components["schemas"]["Answer"];
          at: components["schemas"]["Moment"];
          by: components["schemas"]["Author"];
          contentDigest: components["schemas"]["Digest"];
          id: components["schemas"]["StepId"];
          resultDigest: components["schemas"]["Digest"];
          revision: components["schemas"]["RevisionLetter"];
          /** @constant */
          step: "answered";
        }
      | {
          at: components["schemas"]["Moment"];
          by: components["schemas"]["Author"];
          id: components["schemas"]["StepId"];
          /** @constant */
          step: "information given";
          text: unknown;
        }
      | {
          at: components["schemas"]["Moment"];
          by: components["schemas"]["Author"];
          id: components["schemas"]["StepId"];
          /** @constant */
          step: "closed";
        }
      | {
          at: components["schemas"]["Moment"];
          by: components["schemas"]["Author"];
          id: components["schemas"]["StepId"];
          /** @constant */
          step: "reopened";
          text: unknown;
        };
    /** @enum {string} */
    QuestionView:
      "south elevation" | "east elevation" | "north elevation" | "west elevation" | "plan" | "unfolded wall";
    /** @enum {string} */
    QuestionViewInput:
      "south elevation" | "east elevation" | "north elevation" | "west elevation" | "plan" | "unfolded wall";
    ReaderLink: {
      expiresAt: components["schemas"]["Moment"];
      id: components["schemas"]["PersonId"];
      lastOpenedAt: components["schemas"]["Moment"] | null;
      madeAt: components["schemas"]["Moment"];
      madeBy: string;
      name: string;
      opened: number;
    };
    ReaderLinkMade: {
      link: components["schemas"]["ReaderLink"];
      path: string;
    };
    RecordBundle: {
      /** @constant */
      bundle: 1;
      entries: (components["schemas"]["ToldEntry"] | components["schemas"]["HiddenEntry"])[];
      head: components["schemas"]["SignedHead"];
      keys: components["schemas"]["RecordKey"][];
      name: string;
      project: components["schemas"]["ProjectId"];
      signature: components["schemas"]["Signature"];
    };
    RecordedRun: {
      attempt: number;
      difference: components["schemas"]["RunDifference"] | null;
      doneAt: components["schemas"]["Moment"];
      engineVersion: string;
      resultDigest: components["schemas"]["Digest"] | null;
      verdict: components["schemas"]["Verdict"];
    };
    RecordEntry: {
      actor: components["schemas"]["Actor"];
      at: components["schemas"]["Moment"];
      head: components["schemas"]["Digest"];
      kind: string;
      leaf: components["schemas"]["Digest"];
      number: number;
      payload: components["schemas"]["RecordPayload"] | null;
      projectId: components["schemas"]["ProjectId"];
    };
    RecordKey: {
      fingerprint: components["schemas"]["Digest"];
      follows: {
        fingerprint: components["schemas"]["Digest"];
        signature: components["schemas"]["Signature"];
      } | null;
      publicKey: components["schemas"]["PublicKey"];
      since: components["schemas"]["Moment"];
    };
    RecordPayload:
      | {
          /** @constant */
          kind: "project opened";
          name: string;
        }
      | {
          expiresAt?: components["schemas"]["Moment"] | undefined;
          invitedBy?: string | undefined;
          /** @constant */
          kind: "role given";
          personName: string;
          role: components["schemas"]["Role"];
        }
      | {
          email: string;
          /** @constant */
          kind: "person invited";
          role: components["schemas"]["Role"];
        }
      | {
          email: string;
          /** @constant */
          kind: "invitation withdrawn";
          role: components["schemas"]["Role"];
        }
      | {
          /** @constant */
          kind: "role confirmed";
          licence: components["schemas"]["Licence"] | null;
          personId: components["schemas"]["PersonId"];
          personName: string;
          role: components["schemas"]["Role"];
        }
      | {
          /** @constant */
          kind: "role removed";
          personId: components["schemas"]["PersonId"];
          personName: string;
          role: components["schemas"]["Role"];
        }
      | {
          /** @constant */
          kind: "role expired";
          personId: components["schemas"]["PersonId"];
          personName: string;
          role: components["schemas"]["Role"];
        }
      | {
          expiresAt: components["schemas"]["Moment"];
          /** @constant */
          kind: "expiry set";
          personId: components["schemas"]["PersonId"];
          personName: string;
          role: components["schemas"]["Role"];
        }
      | {
          expiresAt: components["schemas"]["Moment"];
          /** @constant */
          kind: "reader link made";
          name: string;
          personId: components["schemas"]["PersonId"];
        }
      | {
          /** @constant */
          kind: "reader link opened";
          name: string;
          personId: components["schemas"]["PersonId"];
        }
      | {
          /** @constant */
          kind: "reader link ended";
          name: string;
          personId: components["schemas"]["PersonId"];
        }
      | {
          actId: components["schemas"]["ActId"];
          contentDigest: components["schemas"]["Digest"];
          draftNumber: number;
          inverse: components["schemas"]["Operation"][];
          /** @constant */
          kind: "drawn";
          operations: components["schemas"]["Operation"][];
          undoes: components["schemas"]["ActId"] | null;
        }
      | {
          contentDigest: components["schemas"]["Digest"];
          draftNumber: number;
          /** @constant */
          kind: "revision sent";
          letter: components["schemas"]["RevisionLetter"];
          remark: string | null;
        }
      | {
          contentDigest: components["schemas"]["Digest"];
          engineVersion: string;
          /** @constant */
          kind: "assessed";
          letter: components["schemas"]["RevisionLetter"];
          resultDigest: components["schemas"]["Digest"];
          verdict: components["schemas"]["Verdict"];
        }
      | {
          contentDigest: components["schemas"]["Digest"];
          /** @constant */
          kind: "assessment asked for";
          letter: components["schemas"]["RevisionLetter"];
        }
      | {
          contentDigest: components["schemas"]["Digest"];
          /** @constant */
          kind: "assessment failed";
          letter: components["schemas"]["RevisionLetter"];
          why: string;
        }
      | {
          /** @constant */
          kind: "note written";
          note: components["schemas"]["Note"];
        }
      | {
          /** @constant */
          kind: "note settled";
          /** Format: uuid */
          noteId: string;
        }
      | {
          /** @constant */
          kind: "request made";
          request: components["schemas"]["ChangeRequest"];
        }
      | {
          actId: components["schemas"]["ActId"];
          /** @constant */
          kind: "request taken in";
          number: number;
          /** Format: uuid */
          requestId: string;
        }
      | {
          /** @constant */
          kind: "request declined";
          number: number;
          reason: string;
          /** Format: uuid */
          requestId: string;
        }
      | {
          /** @constant */
          kind: "stamp pressed";
          stamp: components["schemas"]["Stamp"];
        }
      | {
          /** @constant */
          kind: "question asked";
          question: components["schemas"]["Question"];
        }
      | {
          elementId: components["schemas"]["ElementId"];
          /** @constant */
          kind: "question followed";
          number: number;
          questionId: components["schemas"]["QuestionId"];
          step: components["schemas"]["QuestionStep"];
        }
      | {
          conditionId: components["schemas"]["ConditionId"];
          /** @constant */
          kind: "condition followed";
          number: number;
          step: components["schemas"]["ConditionStep"];
        }
      | {
          book: components["schemas"]["KeptCostBook"];
          digest: components["schemas"]["Digest"];
          /** @constant */
          kind: "cost book changed";
          number: number;
        }
      | {
          decision: components["schemas"]["Decision"];
          /** @constant */
          kind: "decision made";
        }
      | {
          /** @constant */
          kind: "option set opened";
          name: string;
          number: number;
          setId: components["schemas"]["OptionSetId"];
        }
      | {
          /** @constant */
          kind: "option kept";
          option: components["schemas"]["KeptOption"];
          setId: components["schemas"]["OptionSetId"];
          setNumber: number;
        }
      | {
          engineVersion: string;
          /** @constant */
          kind: "option assessed";
          optionId: components["schemas"]["OptionId"];
          place: number;
          resultDigest: components["schemas"]["Digest"] | null;
          setId: components["schemas"]["OptionSetId"];
          setNumber: number;
          verdict: components["schemas"]["Verdict"];
          why: string | null;
        }
      | {
          /** @constant */
          kind: "option picked";
          name: string;
          pick: components["schemas"]["OptionPick"];
          place: number;
          setId: components["schemas"]["OptionSetId"];
          setNumber: number;
        }
      | {
          /** @constant */
          kind: "option withdrawn";
          name: string;
          optionId: components["schemas"]["OptionId"];
          place: number;
          setId: components["schemas"]["OptionSetId"];
          setNumber: number;
          withdrawal: components["schemas"]["OptionWithdrawal"];
        }
      | {
          /** @constant */
          kind: "set printed";
          letter: components["schemas"]["RevisionLetter"];
          pages: number;
          setDigest: components["schemas"]["Digest"];
          units: components["schemas"]["Units"];
          upTo: number;
        }
      | {
          /** @constant */
          kind: "authority described";
          profile: components["schemas"]["AuthorityProfile"];
        }
      | {
          comments: {
            about: string | null;
            broughtInAt: components["schemas"]["Moment"];
            broughtInBy: components["schemas"]["Author"];
            discipline: string | null;
            /** Format: uuid */
            id: string;
            number: string;
            order: number;
            text: string;
          }[];
          /** @constant */
          kind: "comments brought in";
        }
      | {
          /** Format: uuid */
          commentId: string;
          /** @constant */
          kind: "comment followed";
          number: string;
          step: components["schemas"]["CommentStep"];
        }
      | {
          check: components["schemas"]["Check"];
          /** @constant */
          kind: "revision checked";
        }
      | {
          disposition: components["schemas"]["MarkDisposition"];
          /** @constant */
          kind: "mark disposed";
        }
      | {
          confirmation: components["schemas"]["Confirmation"];
          /** @constant */
          kind: "values confirmed";
        }
      | {
          file: components["schemas"]["KeptFile"];
          /** @constant */
          kind: "file kept";
        }
      | {
          issue: components["schemas"]["SealIssue"];
          /** @constant */
          kind: "issued for seal";
        }
      | {
          copy: components["schemas"]["SealedCopy"];
          issueId: components["schemas"]["SealIssueId"];
          /** @constant */
          kind: "sealed copy kept";
          revision: components["schemas"]["RevisionLetter"];
        }
      | {
          container: {
            author: components["schemas"]["Author"];
            containerNumber: string;
            id: components["schemas"]["SurveyedContainerId"];
            number: number;
            offeredAt: components["schemas"]["Moment"];
            type: components["schemas"]["ContainerType"];
          };
          /** @constant */
          kind: "container offered";
        }
      | {
          containerId: components["schemas"]["SurveyedContainerId"];
          containerNumber: string;
          /** @constant */
          kind: "container followed";
          step: components["schemas"]["SurveyStep"];
        }
      | {
          /** @constant */
          kind: "survey limits set";
          set: components["schemas"]["ProjectSurveyLimits"];
        }
      | {
          /** @constant */
          kind: "site word said";
          word: components["schemas"]["SiteWord"];
        }
      | {
          archiveDigest: components["schemas"]["Digest"];
          head: components["schemas"]["SignedHead"];
          keys: components["schemas"]["RecordKey"][];
          /** @constant */
          kind: "brought in";
          upTo: number;
        }
      | {
          host: string;
          /** @constant */
          kind: "webhook made";
        }
      | {
          host: string;
          /** @constant */
          kind: "webhook ended";
        }
      | {
          host: string;
          /** @constant */
          kind: "webhook stopped";
          why: string;
        };
    RemovePartInput: {
      role: components["schemas"]["RoleInput"];
    };
    /** @enum {string} */
    ReplyForm: "done" | "explained" | "not applicable";
    /** @enum {string} */
    ReplyFormInput: "done" | "explained" | "not applicable";
    RequestAnswered: {
      draft: components["schemas"]["DraftActDone"] | null;
      request: components["schemas"]["ChangeRequest"];
    };
    /** Format: uuid */
    RequestId: string;
    /** Format: uuid */
    RequestIdInput: string;
    RequestPremium: {
      contentDigest: components["schemas"]["Digest"];
      costBook: components["schemas"]["PricedWith"];
      currency: string;
      forShow: boolean;
      lines: components["schemas"]["DifferentLine"][];
      notPriced: string[];
      premiumDigest: components["schemas"]["Digest"];
      requestId: components["schemas"]["RequestId"];
      revision: components["schemas"]["RevisionLetter"];
      totalAfter: number;
      totalBefore: number;
    };
    RequestPreview: {
      changed: string[];
      contentDigest: components["schemas"]["Digest"] | null;
      draftNumber: number;
      refusal: string | null;
      requestId: components["schemas"]["RequestId"];
      scheme: components["schemas"]["Scheme"] | null;
    };
    ResetAskedInput: {
      /** Format: email */
      email: string;
    };
    Revision: {
      assessment: components["schemas"]["AssessmentState"];
      contentDigest: components["schemas"]["Digest"];
      letter: components["schemas"]["RevisionLetter"];
      remark: string | null;
      result: components["schemas"]["Assessment"] | null;
      resultDigest: components["schemas"]["Digest"] | null;
      scheme: components["schemas"]["Scheme"];
      sentAt: components["schemas"]["Moment"];
      sentBy: components["schemas"]["Author"];
      stamp: components["schemas"]["Stamp"] | null;
      verdict: components["schemas"]["Verdict"];
    };
    /** Format: uuid */
    RevisionIdInput: string;
    RevisionLetter: string;
    RevisionLetterInput: string;
    RevisionPremium: {
      assessed: boolean;
      contentDigest: components["schemas"]["Digest"];
      costBook: components["schemas"]["PricedWith"];
      premium: components["schemas"]["Premium"];
      premiumDigest: components["schemas"]["Digest"];
      revision: components["schemas"]["RevisionLetter"];
    };
    RevisionSummary: {
      assessment: components["schemas"]["AssessmentState"];
      contentDigest: components["schemas"]["Digest"];
      letter: components["schemas"]["RevisionLetter"];
      remark: string | null;
      resultDigest: components["schemas"]["Digest"] | null;
      sentAt: components["schemas"]["Moment"];
      sentBy: components["schemas"]["Author"];
      stamp: components["schemas"]["Stamp"] | null;
      verdict: components["schemas"]["Verdict"];
    };
    /** @enum {string} */
    Role: "architect" | "engineer" | "checker" | "owner" | "reader";
    /** @enum {string} */
    RoleInput: "architect" | "engineer" | "checker" | "owner" | "reader";
    RunDifference: {
      after: {
        engineVersion: string;
        resultDigest: components["schemas"]["Digest"];
      };
      appeared: {
        markId: string;
        verdict: components["schemas"]["Verdict"];
      }[];
      before: {
        engineVersion: string;
        resultDigest: components["schemas"]["Digest"];
      };
      gone: {
        markId: string;
        verdict: components["schemas"]["Verdict"];
      }[];
      heavier: {
        markId: string;
        verdict: components["schemas"]["Verdict"];
      }[];
      same: boolean;
      scope: {
        /** @enum {string} */
        after:
          | "load path only, no strength checked"
          | "load path, and strength under gravity loads"
          | "load path, and strength under all loads";
        /** @enum {string} */
        before:
          | "load path only, no strength checked"
          | "load path, and strength under gravity loads"
          | "load path, and strength under all loads";
      };
      turned: {
        after: components["schemas"]["Verdict"];
        before: components["schemas"]["Verdict"];
        markId: string;
      }[];
      units: {
        after: components["schemas"]["Verdict"] | null;
        before: components["schemas"]["Verdict"] | null;
        unitId: components["schemas"]["ElementId"];
      }[];
      whole: {
        after: components["schemas"]["Verdict"];
        before: components["schemas"]["Verdict"];
      };
    };
    Scheme: {
      basis: components["schemas"]["DesignBasis"];
      beams: components["schemas"]["Beam"][];
      containers: components["schemas"]["Container"][];
      freeLoads: components["schemas"]["FreeLoad"][];
      loads: components["schemas"]["FloorLoad"][];
      locks: components["schemas"]["Lock"][];
      openings: components["schemas"]["Opening"][];
      overrides: components["schemas"]["Override"][];
      pads: components["schemas"]["Pad"][];
      posts: components["schemas"]["Post"][];
      seats: components["schemas"]["Seat"][];
      site: components["schemas"]["Site"];
      ties: components["schemas"]["Tie"][];
      uses: components["schemas"]["FloorUse"][];
      /** @constant */
      version: 2;
    };
    SchemeFile: {
      cautions: string[];
      contentDigest: components["schemas"]["Digest"];
      /** @constant */
      format: "cornerway-scheme";
      project: string;
      revision: components["schemas"]["RevisionLetter"] | null;
      scheme: components["schemas"]["Scheme"];
      /** @constant */
      version: 1;
    };
    SealedCopy: {
      at: components["schemas"]["Moment"];
      by: components["schemas"]["Author"];
      digest: components["schemas"]["Digest"];
      fileId: components["schemas"]["FileId"];
      id: components["schemas"]["StepId"];
      name: string;
      sizeBytes: number;
    };
    SealHindrance:
      | {
          /** @constant */
          why: "not assessed";
        }
      | {
          /** @constant */
          why: "strength not judged under all loads";
        }
      | {
          markId: components["schemas"]["MarkId"];
          verdict: components["schemas"]["Verdict"];
          /** @constant */
          why: "mark";
        }
      | {
          ownerId: string;
          part: string;
          utilisation: number;
          /** @constant */
          why: "beyond its limit";
        }
      | {
          elementId: string;
          /** @constant */
          why: "found otherwise";
        }
      | {
          number: number;
          /** @constant */
          why: "condition open";
        }
      | {
          value: components["schemas"]["MemoryValue"];
          /** @constant */
          why: "from memory";
        };
    SealIssue: {
      author: components["schemas"]["Author"];
      contentDigest: components["schemas"]["Digest"];
      id: components["schemas"]["SealIssueId"];
      issuedAt: components["schemas"]["Moment"];
      number: number;
      resultDigest: components["schemas"]["Digest"];
      revision: components["schemas"]["RevisionLetter"];
      steps: components["schemas"]["SealedCopy"][];
    };
    /** Format: uuid */
    SealIssueId: string;
    /** Format: uuid */
    SealIssueIdInput: string;
    SealIssueNow: {
      issue: components["schemas"]["SealIssue"];
      standing: components["schemas"]["Standing"];
    };
    SealState: {
      checks: components["schemas"]["CheckNow"][];
      confirmations: components["schemas"]["Confirmation"][];
      dispositions: components["schemas"]["MarkDispositionNow"][];
      hindrances: components["schemas"]["SealHindrance"][];
      issues: components["schemas"]["SealIssueNow"][];
      revision: components["schemas"]["RevisionLetter"] | null;
    };
    Seat: {
      heldDown: boolean;
      id: components["schemas"]["ElementId"];
      lengthUm: components["schemas"]["PositiveLengthUm"];
      levelErrorUm?: components["schemas"]["LengthUm"] | undefined;
      lowerId: components["schemas"]["ElementId"];
      packingUm: components["schemas"]["PositiveLengthUm"];
      stiffenerUm?: components["schemas"]["PositiveLengthUm"] | undefined;
      tag: components["schemas"]["Tag"];
      upperId: components["schemas"]["ElementId"];
      widthUm: components["schemas"]["PositiveLengthUm"];
      xUm: components["schemas"]["LengthUm"];
      yUm: components["schemas"]["LengthUm"];
    };
    SeatInput: {
      heldDown: boolean;
      id: components["schemas"]["ElementIdInput"];
      lengthUm: components["schemas"]["PositiveLengthUmInput"];
      levelErrorUm?: components["schemas"]["LengthUmInput"] | undefined;
      lowerId: components["schemas"]["ElementIdInput"];
      packingUm: components["schemas"]["PositiveLengthUmInput"];
      stiffenerUm?: components["schemas"]["PositiveLengthUmInput"] | undefined;
      tag: components["schemas"]["TagInput"];
      upperId: components["schemas"]["ElementIdInput"];
      widthUm: components["schemas"]["PositiveLengthUmInput"];
      xUm: components["schemas"]["LengthUmInput"];
      yUm: components["schemas"]["LengthUmInput"];
    };
    SectionName: string;
    SectionNameInput: string;
    Session: {
      csrfToken: string;
      person: {
        administrator: boolean;
        /** @constant */
        byLink?: true | undefined;
        email: string;
        id: components["schemas"]["PersonId"];
        name: string;
      };
    };
    SetExpiryInput: {
      expiresAt: components["schemas"]["MomentInput"];
    };
    SheetWalls:
      | {
          /** @constant */
          rule: "counted";
        }
      | {
          reason: unknown;
          /** @constant */
          rule: "left out";
        }
      | {
          capNPerM: number;
          reason: unknown;
          /** @constant */
          rule: "cap raised";
        };
    SheetWallsInput:
      | {
          /** @constant */
          rule: "counted";
        }
      | {
          reason: string;
          /** @constant */
          rule: "left out";
        }
      | {
          capNPerM: number;
          reason: string;
          /** @constant */
          rule: "cap raised";
        };
    Signature: string;
    SignedHead: {
      fingerprint: components["schemas"]["Digest"];
      head: components["schemas"]["Digest"];
      number: number;
      project: components["schemas"]["ProjectId"];
      signature: components["schemas"]["Signature"];
      time: components["schemas"]["Moment"];
    };
    SignedInPlace: {
      agent: string;
      endsAt: components["schemas"]["Moment"];
      /** Format: uuid */
      id: string;
      network: string;
      present: boolean;
      seenAt: components["schemas"]["Moment"];
      since: components["schemas"]["Moment"];
    };
    SignInInput: {
      /** Format: email */
      email: string;
      password: string;
    };
    Site: {
      edition: components["schemas"]["CodeEdition"];
      groundZUm: components["schemas"]["LengthUm"];
      northMdeg: components["schemas"]["AngleMdeg"];
    };
    SiteHazards: {
      /** @enum {string} */
      riskCategory: "I" | "II" | "III" | "IV";
      seismic: {
        edition: components["schemas"]["CodeEdition"];
        longPeriodS: number;
        s1: number;
        /** @enum {string} */
        siteClass: "A" | "B" | "BC" | "C" | "CD" | "D" | "DE" | "E" | "default";
        siteValues?:
          | {
              sm1: number;
              sms: number;
            }
          | undefined;
        ss: number;
      };
      snow: {
        edition: components["schemas"]["CodeEdition"];
        groundPa: number;
        /** @enum {string} */
        roofExposure: "fully exposed" | "partially exposed" | "sheltered";
        /** @enum {string} */
        thermal: "heated" | "just above freezing" | "unheated" | "below freezing";
        winterWind?: number | undefined;
      };
      wind: {
        edition: components["schemas"]["CodeEdition"];
        elevationM: number;
        /** @enum {string} */
        exposure: "B" | "C" | "D";
        speedMs: number;
        topographicFactor: number;
      };
    };
    SiteHazardsInput: {
      /** @enum {string} */
      riskCategory: "I" | "II" | "III" | "IV";
      seismic: {
        edition: components["schemas"]["CodeEditionInput"];
        longPeriodS: number;
        s1: number;
        /** @enum {string} */
        siteClass: "A" | "B" | "BC" | "C" | "CD" | "D" | "DE" | "E" | "default";
        siteValues?:
          | {
              sm1: number;
              sms: number;
            }
          | undefined;
        ss: number;
      };
      snow: {
        edition: components["schemas"]["CodeEditionInput"];
        groundPa: number;
        /** @enum {string} */
        roofExposure: "fully exposed" | "partially exposed" | "sheltered";
        /** @enum {string} */
        thermal: "heated" | "just above freezing" | "unheated" | "below freezing";
        winterWind?: number | undefined;
      };
      wind: {
        edition: components["schemas"]["CodeEditionInput"];
        elevationM: number;
        /** @enum {string} */
        exposure: "B" | "C" | "D";
        speedMs: number;
        topographicFactor: number;
      };
    };
    SiteInput: {
      edition: components["schemas"]["CodeEditionInput"];
      groundZUm: components["schemas"]["LengthUmInput"];
      northMdeg: components["schemas"]["AngleMdegInput"];
    };
    SiteItem: {
      elementId: components["schemas"]["ElementId"];
      key: components["schemas"]["SiteItemKey"];
      kind: components["schemas"]["SiteItemKind"];
      point: components["schemas"]["HoldPoint"] | null;
      weldM: number | null;
    };
    SiteItemKey: string;
    SiteItemKeyInput: string;
    /** @enum {string} */
    SiteItemKind: "post" | "beam" | "seat" | "framing" | "tie" | "lock" | "pad" | "weld" | "hold point";
    SiteItemNow: {
      drawnOtherwise: boolean;
      item: components["schemas"]["SiteItem"];
      state: components["schemas"]["SiteItemState"];
      waitsFor: components["schemas"]["Role"][] | null;
      words: components["schemas"]["SiteWord"][];
    };
    /** @enum {string} */
    SiteItemState: "open" | "built" | "differs" | "missing" | "accepted" | "to mend";
    SiteNow: {
      /** @enum {string} */
      built: "nothing to build from" | "being built" | "as drawn" | "not built as drawn";
      by: ("issued for seal" | "stamped") | null;
      items: components["schemas"]["SiteItemNow"][];
      revision: components["schemas"]["RevisionLetter"] | null;
    };
    SiteWord:
      | {
          author: components["schemas"]["Author"];
          drawnDigest: components["schemas"]["Digest"];
          elementId: components["schemas"]["ElementId"];
          id: components["schemas"]["SiteWordId"];
          key: components["schemas"]["SiteItemKey"];
          number: number;
          photos: components["schemas"]["Photo"][];
          revision: components["schemas"]["RevisionLetter"];
          saidAt: components["schemas"]["Moment"];
          /** @constant */
          says: "built";
          text: unknown | null;
        }
      | {
          author: components["schemas"]["Author"];
          drawnDigest: components["schemas"]["Digest"];
          elementId: components["schemas"]["ElementId"];
          id: components["schemas"]["SiteWordId"];
          key: components["schemas"]["SiteItemKey"];
          number: number;
          photos: components["schemas"]["Photo"][];
          revision: components["schemas"]["RevisionLetter"];
          saidAt: components["schemas"]["Moment"];
          /** @constant */
          says: "differs";
          text: unknown;
        }
      | {
          author: components["schemas"]["Author"];
          drawnDigest: components["schemas"]["Digest"];
          elementId: components["schemas"]["ElementId"];
          id: components["schemas"]["SiteWordId"];
          key: components["schemas"]["SiteItemKey"];
          number: number;
          photos: components["schemas"]["Photo"][];
          revision: components["schemas"]["RevisionLetter"];
          saidAt: components["schemas"]["Moment"];
          /** @constant */
          says: "missing";
          text: unknown;
        }
      | {
          author: components["schemas"]["Author"];
          drawnDigest: components["schemas"]["Digest"];
          elementId: components["schemas"]["ElementId"];
          id: components["schemas"]["SiteWordId"];
          key: components["schemas"]["SiteItemKey"];
          number: number;
          revision: components["schemas"]["RevisionLetter"];
          saidAt: components["schemas"]["Moment"];
          /** @constant */
          says: "accepted";
          text: unknown;
        }
      | {
          author: components["schemas"]["Author"];
          drawnDigest: components["schemas"]["Digest"];
          elementId: components["schemas"]["ElementId"];
          id: components["schemas"]["SiteWordId"];
          key: components["schemas"]["SiteItemKey"];
          number: number;
          revision: components["schemas"]["RevisionLetter"];
          saidAt: components["schemas"]["Moment"];
          /** @constant */
          says: "to mend";
          text: unknown;
        }
      | {
          author: components["schemas"]["Author"];
          drawnDigest: components["schemas"]["Digest"];
          elementId: components["schemas"]["ElementId"];
          id: components["schemas"]["SiteWordId"];
          key: components["schemas"]["SiteItemKey"];
          number: number;
          revision: components["schemas"]["RevisionLetter"];
          saidAt: components["schemas"]["Moment"];
          /** @constant */
          says: "reopened";
          text: unknown;
        };
    /** Format: uuid */
    SiteWordId: string;
    /** Format: uuid */
    SiteWordIdInput: string;
    SolvedForces: {
      cases: {
        caseId: string;
        reactions:
          | {
              at: components["schemas"]["PointMm"];
              eastKn: number;
              elementId: string;
              northKn: number;
              upKn: number;
            }[]
          | null;
        symbol: string;
      }[];
      members: {
        moment: {
          at: {
            uMm: number;
            yMm: number;
            zMm: number;
          };
          run: string;
          value: number;
        };
        ownerId: string;
        part: string;
        place: string;
        pressed: {
          at: {
            uMm: number;
            yMm: number;
            zMm: number;
          };
          run: string;
          value: number;
        };
        pulled: {
          at: {
            uMm: number;
            yMm: number;
            zMm: number;
          };
          run: string;
          value: number;
        };
        shear: {
          at: {
            uMm: number;
            yMm: number;
            zMm: number;
          };
          run: string;
          value: number;
        };
      }[];
    };
    Stamp: {
      author: components["schemas"]["Author"];
      conditions?: components["schemas"]["NewCondition"][] | undefined;
      contentDigest: components["schemas"]["Digest"];
      disposition: components["schemas"]["Disposition"];
      elementId?: components["schemas"]["ElementId"] | undefined;
      id: components["schemas"]["StampId"];
      pressedAt: components["schemas"]["Moment"];
      resultDigest: components["schemas"]["Digest"];
      revision: components["schemas"]["RevisionLetter"];
      text: string;
      wording?: unknown | undefined;
    };
    /** Format: uuid */
    StampId: string;
    /** Format: uuid */
    StampIdInput: string;
    StampNow: {
      stamp: components["schemas"]["Stamp"];
      standing: components["schemas"]["Standing"];
    };
    StampWording: {
      [key: string]: unknown;
    };
    StampWordingChangeInput: {
      stampWording: components["schemas"]["StampWordingInput"];
    };
    StampWordingInput: {
      [key: string]: string;
    };
    Standing: {
      changed: components["schemas"]["CoverChange"];
      newest: components["schemas"]["RevisionLetter"];
      revision: components["schemas"]["RevisionLetter"];
      /** @enum {string} */
      state: "stands" | "waits" | "stale";
    };
    StartProjectInput: {
      client: string;
      name: string;
      ownPart: ("architect" | "owner") | null;
      place: string;
    };
    /** Format: uuid */
    StepId: string;
    /** Format: uuid */
    StepIdInput: string;
    StrengthReport: {
      actionsLeftOut: string[];
      cases: {
        id: string;
        symbol: string;
        xKn: number;
        yKn: number;
        zKn: number;
      }[];
      combinations: {
        clause: {
          certainty: components["schemas"]["Certainty"];
          document: string;
          edition: string;
          place: string;
        };
        /** @enum {string} */
        level: "strength" | "allowable";
        runs: number;
        text: string;
      }[];
      coverage: components["schemas"]["CoverageRow"][];
      forces?: components["schemas"]["SolvedForces"] | undefined;
      loads: components["schemas"]["LoadDerivation"][];
      results: components["schemas"]["CheckResult"][];
      windLimits: {
        clause: {
          certainty: components["schemas"]["Certainty"];
          document: string;
          edition: string;
          place: string;
        };
        holds: boolean;
        limit: string;
        most: number;
        unit: string;
        value: number;
      }[];
      withoutEquilibrium: {
        assumptions: string;
        first: string;
        held?: string[] | undefined;
        runs: number;
        words: string;
      }[];
    };
    SurveyDeparture:
      | {
          elementId: components["schemas"]["ElementId"];
          /** @constant */
          what: "no such unit";
        }
      | {
          drawn: components["schemas"]["ContainerType"];
          elementId: components["schemas"]["ElementId"];
          surveyed: components["schemas"]["ContainerType"];
          /** @constant */
          what: "other type";
        }
      | {
          elementId: components["schemas"]["ElementId"];
          state: components["schemas"]["SurveyState"];
          /** @constant */
          what: "not accepted";
        }
      | {
          drawnUm: number | null;
          elementId: components["schemas"]["ElementId"];
          measuredUm: number;
          member: components["schemas"]["MemberName"];
          /** @constant */
          what: "thickness";
        }
      | {
          drawnKg: number | null;
          elementId: components["schemas"]["ElementId"];
          plateKg: number;
          /** @constant */
          what: "tare";
        };
    SurveyedContainer: {
      author: components["schemas"]["Author"];
      containerNumber: string;
      id: components["schemas"]["SurveyedContainerId"];
      number: number;
      offeredAt: components["schemas"]["Moment"];
      steps: components["schemas"]["SurveyStep"][];
      type: components["schemas"]["ContainerType"];
    };
    /** Format: uuid */
    SurveyedContainerId: string;
    /** Format: uuid */
    SurveyedContainerIdInput: string;
    SurveyedContainerNow: {
      container: components["schemas"]["SurveyedContainer"];
      departures: components["schemas"]["SurveyDeparture"][];
      findings: components["schemas"]["SurveyFinding"][];
      position: {
        elementId: components["schemas"]["ElementId"];
        tag: components["schemas"]["Tag"];
      } | null;
      state: components["schemas"]["SurveyState"];
    };
    SurveyFinding:
      | {
          beyond: boolean | null;
          foundUm: number;
          kind: components["schemas"]["DamageKind"];
          limitUm: number | null;
          member: components["schemas"]["MemberName"];
          /** @constant */
          of: "damage";
          place: string;
        }
      | {
          assumedUm: number | null;
          beyond: boolean | null;
          foundUm: number;
          limitUm: number | null;
          member: components["schemas"]["MemberName"];
          /** @constant */
          of: "thickness";
        };
    /** @enum {string} */
    SurveyJudgement: "accepted" | "repair" | "rejected";
    /** @enum {string} */
    SurveyJudgementInput: "accepted" | "repair" | "rejected";
    SurveyLimits: {
      damage: components["schemas"]["DamageLimit"][];
      leastThickness: {
        certainty: components["schemas"]["Certainty"];
        permille: number;
        source: unknown;
      };
    };
    /** Format: uuid */
    SurveyLimitsId: string;
    /** Format: uuid */
    SurveyLimitsIdInput: string;
    SurveyLimitsInput: {
      damage: components["schemas"]["DamageLimitInput"][];
      leastThickness: {
        certainty: components["schemas"]["CertaintyInput"];
        permille: number;
        source: string;
      };
    };
    SurveyNow: {
      containers: components["schemas"]["SurveyedContainerNow"][];
      limits: components["schemas"]["SurveyLimits"];
      revision: components["schemas"]["RevisionLetter"] | null;
      setBy: {
        author: components["schemas"]["Author"];
        setAt: components["schemas"]["Moment"];
      } | null;
    };
    /** @enum {string} */
    SurveyState: "offered" | "inspected" | "accepted" | "repair" | "rejected";
    SurveyStep:
      | {
          at: components["schemas"]["Moment"];
          by: components["schemas"]["Author"];
          damages: components["schemas"]["Damage"][];
          day: components["schemas"]["Day"];
          floor: unknown | null;
          id: components["schemas"]["StepId"];
          measuredWith: unknown | null;
          photos: components["schemas"]["Photo"][];
          plate: components["schemas"]["PlateFacts"];
          /** @constant */
          step: "inspected";
          text: unknown | null;
          thicknesses: components["schemas"]["MeasuredThickness"][];
        }
      | {
          at: components["schemas"]["Moment"];
          by: components["schemas"]["Author"];
          id: components["schemas"]["StepId"];
          outcome: components["schemas"]["SurveyJudgement"];
          /** @constant */
          step: "judged";
          text: unknown | null;
        }
      | {
          at: components["schemas"]["Moment"];
          by: components["schemas"]["Author"];
          elementId: components["schemas"]["ElementId"];
          id: components["schemas"]["StepId"];
          /** @constant */
          step: "assigned";
          tag: components["schemas"]["Tag"];
        }
      | {
          at: components["schemas"]["Moment"];
          by: components["schemas"]["Author"];
          id: components["schemas"]["StepId"];
          /** @constant */
          step: "released";
          text: unknown;
        };
    Tag: string;
    TagInput: string;
    TakeBackInput: {
      base: number;
      id: components["schemas"]["ActIdInput"];
    };
    Thread: {
      notes: components["schemas"]["Note"][];
      requests: components["schemas"]["ChangeRequest"][];
      stamps: components["schemas"]["Stamp"][];
    };
    Tie: {
      aId: components["schemas"]["ElementId"];
      bId: components["schemas"]["ElementId"];
      /** @enum {string} */
      carries: "in plan" | "in plan and upright";
      id: components["schemas"]["ElementId"];
      stiffnessNPerMm?: number | undefined;
      tag: components["schemas"]["Tag"];
      xUm: components["schemas"]["LengthUm"];
      yUm: components["schemas"]["LengthUm"];
      zUm: components["schemas"]["LengthUm"];
    };
    TieInput: {
      aId: components["schemas"]["ElementIdInput"];
      bId: components["schemas"]["ElementIdInput"];
      /** @enum {string} */
      carries: "in plan" | "in plan and upright";
      id: components["schemas"]["ElementIdInput"];
      stiffnessNPerMm?: number | undefined;
      tag: components["schemas"]["TagInput"];
      xUm: components["schemas"]["LengthUmInput"];
      yUm: components["schemas"]["LengthUmInput"];
      zUm: components["schemas"]["LengthUmInput"];
    };
    TokenPrefix: string;
    /** @enum {string} */
    TokenScope: "read" | "draw" | "review";
    /** @enum {string} */
    TokenScopeInput: "read" | "draw" | "review";
    ToldEntry: {
      actor: components["schemas"]["PersonId"];
      digest: components["schemas"]["Digest"];
      kind: string;
      number: number;
      opened: {
        actorName: string;
        payload: {
          kind: string;
        } & {
          [key: string]: unknown;
        };
        salt: components["schemas"]["Digest"];
        token?: string | undefined;
      } | null;
      /** @enum {string} */
      role: "architect" | "engineer" | "checker" | "owner" | "reader" | "administrator" | "service";
      time: components["schemas"]["Moment"];
    };
    /** @enum {string} */
    Units: "SI" | "US";
    /** @enum {string} */
    UnitsInput: "SI" | "US";
    UseLinkInput:
      | {
          /** @constant */
          as: "new person";
          name: string;
          password: string;
        }
      | {
          /** @constant */
          as: "known person";
          password: string;
        }
      | {
          /** @constant */
          as: "signed in";
        }
      | {
          /** @constant */
          as: "reader";
        }
      | {
          /** @constant */
          as: "first administrator";
          /** Format: email */
          email: string;
          name: string;
          password: string;
        }
      | {
          /** @constant */
          as: "new password";
          password: string;
        };
    /** @enum {string} */
    Verdict: "works as built" | "works with steel" | "not checked" | "needs the engineer" | "does not work";
    WallFacts: {
      cutShare: number;
      shortestPierMm: number;
      /** @enum {string} */
      wallRule:
        | "keeps both"
        | "more than half cut"
        | "pier under 4 ft"
        | "more than half cut and pier under 4 ft"
        | "not a wall";
    };
    Webhook: {
      failures: number;
      /** Format: uuid */
      id: string;
      madeAt: components["schemas"]["Moment"];
      madeBy: {
        id: components["schemas"]["PersonId"];
        name: string;
      };
      stoppedAt: components["schemas"]["Moment"] | null;
      stoppedBecause: string | null;
      url: string;
    };
    WebhookDelivery: {
      at: components["schemas"]["Moment"];
      attempt: number;
      entry: number;
      error: string | null;
      /** Format: uuid */
      id: string;
      ms: number;
      status: number | null;
    };
    WebhookMade: {
      failures: number;
      /** Format: uuid */
      id: string;
      madeAt: components["schemas"]["Moment"];
      madeBy: {
        id: components["schemas"]["PersonId"];
        name: string;
      };
      secret: string | null;
      stoppedAt: components["schemas"]["Moment"] | null;
      stoppedBecause: string | null;
      url: string;
    };
    WorkingId: string;
    WorkingIdInput: string;
  };
  responses: never;
  parameters: never;
  requestBodies: never;
  headers: never;
  pathItems: never;
}
export type $defs = Record<string, never>;
export interface operations {
  readAccount: {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["Account"];
        };
      };
      /** @description `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `reading-only` A reader's link opens a project to read, and nothing else. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("reading-only" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  stateLicence: {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["LicenceChangeInput"];
      };
    };
    responses: {
      /** @description Done, nothing to tell. */
      204: {
        headers: {
          [name: string]: unknown;
        };
        content?: never;
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("csrf-refused" | "origin-refused" | "reading-only" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  changeName: {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NameChangeInput"];
      };
    };
    responses: {
      /** @description Done, nothing to tell. */
      204: {
        headers: {
          [name: string]: unknown;
        };
        content?: never;
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("csrf-refused" | "origin-refused" | "reading-only" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  readNoticeSetting: {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["NoticeSetting"];
        };
      };
      /** @description `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `reading-only` A reader's link opens a project to read, and nothing else. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("reading-only" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  setNotices: {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NoticeSettingInput"];
      };
    };
    responses: {
      /** @description Done, nothing to tell. */
      204: {
        headers: {
          [name: string]: unknown;
        };
        content?: never;
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("csrf-refused" | "origin-refused" | "reading-only" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  changePassword: {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["PasswordChangeInput"];
      };
    };
    responses: {
      /** @description Done, nothing to tell. */
      204: {
        headers: {
          [name: string]: unknown;
        };
        content?: never;
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `origin-refused` The request comes from another site. · `present-password-wrong` The present password is another one. · `reading-only` A reader's link opens a project to read, and nothing else. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | ("csrf-refused" | "origin-refused" | "present-password-wrong" | "reading-only" | "scope-refused")
              | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `password-refused` This password will not do. */
      422: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "password-refused" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `busy` Too much is asked of the service at once. Try again in a few seconds. · `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("busy" | "unready") | undefined;
          };
        };
      };
    };
  };
  listSessions: {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["SignedInPlace"][];
        };
      };
      /** @description `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `reading-only` A reader's link opens a project to read, and nothing else. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("reading-only" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  endOtherSessions: {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done, nothing to tell. */
      204: {
        headers: {
          [name: string]: unknown;
        };
        content?: never;
      };
      /** @description `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("csrf-refused" | "origin-refused" | "reading-only" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  endSession: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        sessionId: string;
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done, nothing to tell. */
      204: {
        headers: {
          [name: string]: unknown;
        };
        content?: never;
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("csrf-refused" | "origin-refused" | "reading-only" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  wordStamps: {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["StampWordingChangeInput"];
      };
    };
    responses: {
      /** @description Done, nothing to tell. */
      204: {
        headers: {
          [name: string]: unknown;
        };
        content?: never;
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("csrf-refused" | "origin-refused" | "reading-only" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  listKeptProjects: {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["KeptProject"][];
        };
      };
      /** @description `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `administrator-only` Only an administrator of this service does that. · `reading-only` A reader's link opens a project to read, and nothing else. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("administrator-only" | "reading-only" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  bringInArchive: {
    parameters: {
      query?:
        | {
            key?: components["schemas"]["DigestInput"] | undefined;
          }
        | undefined;
      header?: never;
      path?: never;
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Made. */
      201: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["ArchiveBroughtIn"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `administrator-only` Only an administrator of this service does that. · `csrf-refused` The page is out of date. Reload it and try again. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              ("administrator-only" | "csrf-refused" | "origin-refused" | "reading-only" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `project-here` This project is here already. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "project-here" | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `archive-refused` This archive is not taken. · `file-refused` This file is not taken. */
      422: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("archive-refused" | "file-refused") | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  readLink: {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["OpenedLink"];
        };
      };
      /** @description `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "version-unknown" | undefined;
          };
        };
      };
      /** @description `link-gone` This link is used, withdrawn or expired. Ask for a new one. */
      410: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "link-gone" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  openLink: {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["OpenLinkInput"];
      };
    };
    responses: {
      /** @description Made. */
      201: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["OpenedLink"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `origin-refused` The request comes from another site. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "origin-refused" | undefined;
          };
        };
      };
      /** @description `link-gone` This link is used, withdrawn or expired. Ask for a new one. */
      410: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "link-gone" | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  useLink: {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["UseLinkInput"];
      };
    };
    responses: {
      /** @description Made. */
      201: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["LinkUsed"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `sign-in-refused` No one is known by that address and password. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "sign-in-refused" | undefined;
          };
        };
      };
      /** @description `origin-refused` The request comes from another site. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "origin-refused" | undefined;
          };
        };
      };
      /** @description `already-in` That person has this part already. · `roles-exclude` One person never both draws and judges in a project. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("already-in" | "roles-exclude") | undefined;
          };
        };
      };
      /** @description `link-gone` This link is used, withdrawn or expired. Ask for a new one. */
      410: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "link-gone" | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `password-refused` This password will not do. */
      422: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "password-refused" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `busy` Too much is asked of the service at once. Try again in a few seconds. · `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("busy" | "unready") | undefined;
          };
        };
      };
    };
  };
  askNewPassword: {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["ResetAskedInput"];
      };
    };
    responses: {
      /** @description Taken; the rest follows. */
      202: {
        headers: {
          [name: string]: unknown;
        };
        content?: never;
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `origin-refused` The request comes from another site. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "origin-refused" | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  listNotices: {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["Notices"];
        };
      };
      /** @description `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `reading-only` A reader's link opens a project to read, and nothing else. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("reading-only" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  listOwed: {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["Owed"][];
        };
      };
      /** @description `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "scope-refused" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  listProjects: {
    parameters: {
      query?:
        | {
            after?: components["schemas"]["ProjectIdInput"] | undefined;
            /** @description How many at most, up to 500. */
            limit?: string | undefined;
          }
        | undefined;
      header?: never;
      path?: never;
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          /** @description Where the next page is, as `<address>; rel="next"` (RFC 8288); absent on the last. */
          link?: string | undefined;
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["ProjectSummary"][];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "scope-refused" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  startProject: {
    parameters: {
      query?: never;
      header?:
        | {
            /** @description Sent again within 24 hours with the same body, the first answer comes again and nothing is done twice. */
            "idempotency-key"?: string | undefined;
          }
        | undefined;
      path?: never;
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["StartProjectInput"];
      };
    };
    responses: {
      /** @description Made. */
      201: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["ProjectStarted"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `administrator-only` Only an administrator of this service does that. · `csrf-refused` The page is out of date. Reload it and try again. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              ("administrator-only" | "csrf-refused" | "origin-refused" | "reading-only" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `key-reused` That Idempotency-Key was used for something else. */
      422: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "key-reused" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  readProject: {
    parameters: {
      query?: never;
      header?:
        | {
            /** @description The tag of what is held already (RFC 9110 section 13.1.2). */
            "if-none-match"?: string | undefined;
          }
        | undefined;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          /** @description Names what is answered; sent back in `If-None-Match`, it is answered 304 while that stands. */
          etag?: string | undefined;
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["Project"];
        };
      };
      /** @description As it was under that tag. */
      304: {
        headers: {
          /** @description Names what is answered; sent back in `If-None-Match`, it is answered 304 while that stands. */
          etag?: string | undefined;
          [name: string]: unknown;
        };
        content?: never;
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  takeArchive: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          /** @description `attachment`, with a name for the file. */
          "content-disposition"?: string | undefined;
          [name: string]: unknown;
        };
        content: {
          "application/zip": string;
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `signing-off` This service is not set up to sign heads of records. */
      422: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "signing-off" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  readAuthority: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["ProjectAuthority"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  describeAuthority: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["AuthorityProfileInput"];
      };
    };
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["ProjectAuthority"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  checkRevision: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NewCheckInput"];
      };
    };
    responses: {
      /** @description Made. */
      201: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["CheckNow"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `own-work` Nobody checks their own work. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "own-work"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `assessment-pending` This revision is not checked yet. · `digest-mismatch` What is on the screen is not what is here now. · `id-reused` That id belongs to another act. · `revision-superseded` There is a newer revision. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("assessment-pending" | "digest-mismatch" | "id-reused" | "revision-superseded") | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  listConditions: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["ConditionNow"][];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  meetCondition: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        conditionId: components["schemas"]["ConditionIdInput"];
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["MeetConditionInput"];
      };
    };
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["ConditionNow"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `closer-refused` Whoever raised it closes it, and never whoever met it. · `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "closer-refused"
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `id-reused` That id belongs to another act. · `step-refused` It does not stand so that this can follow. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("id-reused" | "step-refused") | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  judgeCondition: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        conditionId: components["schemas"]["ConditionIdInput"];
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["JudgeConditionInput"];
      };
    };
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["ConditionNow"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `closer-refused` Whoever raised it closes it, and never whoever met it. · `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "closer-refused"
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `id-reused` That id belongs to another act. · `step-refused` It does not stand so that this can follow. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("id-reused" | "step-refused") | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  confirmValues: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NewConfirmationInput"];
      };
    };
    responses: {
      /** @description Made. */
      201: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["Confirmation"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `id-reused` That id belongs to another act. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "id-reused" | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  readCostBook: {
    parameters: {
      query?: never;
      header?:
        | {
            /** @description The tag of what is held already (RFC 9110 section 13.1.2). */
            "if-none-match"?: string | undefined;
          }
        | undefined;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          /** @description Names what is answered; sent back in `If-None-Match`, it is answered 304 while that stands. */
          etag?: string | undefined;
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["ProjectCostBook"];
        };
      };
      /** @description As it was under that tag. */
      304: {
        headers: {
          /** @description Names what is answered; sent back in `If-None-Match`, it is answered 304 while that stands. */
          etag?: string | undefined;
          [name: string]: unknown;
        };
        content?: never;
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  changeCostBook: {
    parameters: {
      query?: never;
      header: {
        /** @description The tag of the book that is changed (RFC 9110 section 13.1.1). */
        "if-match": string;
      };
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["CostBookInput"];
      };
    };
    responses: {
      /** @description Done. */
      200: {
        headers: {
          /** @description Names what is answered; sent back in `If-None-Match`, it is answered 304 while that stands. */
          etag?: string | undefined;
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["ProjectCostBook"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `book-moved-on` Someone changed the cost book meanwhile. Look again. */
      412: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "book-moved-on" | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  listDecisions: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["DecisionShown"][];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  decide: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NewDecisionInput"];
      };
    };
    responses: {
      /** @description Made. */
      201: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["Decision"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `already-answered` This has been answered already. · `assessment-pending` This revision is not checked yet. · `digest-mismatch` What is on the screen is not what is here now. · `id-reused` That id belongs to another act. · `revision-superseded` There is a newer revision. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | ("already-answered" | "assessment-pending" | "digest-mismatch" | "id-reused" | "revision-superseded")
              | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  disposeMark: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NewMarkDispositionInput"];
      };
    };
    responses: {
      /** @description Made. */
      201: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["MarkDisposition"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `assessment-pending` This revision is not checked yet. · `digest-mismatch` What is on the screen is not what is here now. · `id-reused` That id belongs to another act. · `revision-superseded` There is a newer revision. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("assessment-pending" | "digest-mismatch" | "id-reused" | "revision-superseded") | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `element-unknown` No such element in that revision. */
      422: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "element-unknown" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  readDraft: {
    parameters: {
      query?: never;
      header?:
        | {
            /** @description The tag of what is held already (RFC 9110 section 13.1.2). */
            "if-none-match"?: string | undefined;
          }
        | undefined;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          /** @description Names what is answered; sent back in `If-None-Match`, it is answered 304 while that stands. */
          etag?: string | undefined;
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["Draft"];
        };
      };
      /** @description As it was under that tag. */
      304: {
        headers: {
          /** @description Names what is answered; sent back in `If-None-Match`, it is answered 304 while that stands. */
          etag?: string | undefined;
          [name: string]: unknown;
        };
        content?: never;
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  draw: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["DraftActInput"];
      };
    };
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["DraftActDone"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `draft-base-ahead` The draft is not that far yet. Reload. · `draft-conflict` Someone changed the same thing first. Both versions are shown. · `id-reused` That id belongs to another act. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("draft-base-ahead" | "draft-conflict" | "id-reused") | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `draft-refused` The scheme cannot take this change. */
      422: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "draft-refused" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  takeBack: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        actId: components["schemas"]["ActIdInput"];
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["TakeBackInput"];
      };
    };
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["DraftActDone"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `draft-base-ahead` The draft is not that far yet. Reload. · `draft-conflict` Someone changed the same thing first. Both versions are shown. · `id-reused` That id belongs to another act. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("draft-base-ahead" | "draft-conflict" | "id-reused") | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `draft-refused` The scheme cannot take this change. */
      422: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "draft-refused" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  saveDraft: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          /** @description `attachment`, with a name for the file. */
          "content-disposition"?: string | undefined;
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["SchemeFile"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  bringIn: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["BringInInput"];
      };
    };
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["DraftActDone"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `draft-base-ahead` The draft is not that far yet. Reload. · `draft-conflict` Someone changed the same thing first. Both versions are shown. · `id-reused` That id belongs to another act. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("draft-base-ahead" | "draft-conflict" | "id-reused") | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `draft-refused` The scheme cannot take this change. */
      422: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "draft-refused" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  readFile: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        fileId: components["schemas"]["FileIdInput"];
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          /** @description The name to save it under. */
          "content-disposition"?: string | undefined;
          [name: string]: unknown;
        };
        content: {
          "application/pdf": string;
          "image/jpeg": string;
          "image/png": string;
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  keepFile: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        fileId: components["schemas"]["FileIdInput"];
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Made. */
      201: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["KeptFile"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `id-reused` That id belongs to another act. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "id-reused" | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `file-refused` This file is not taken. */
      422: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "file-refused" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `busy` Too much is asked of the service at once. Try again in a few seconds. · `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("busy" | "unready") | undefined;
          };
        };
      };
    };
  };
  invite: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NewInvitationInput"];
      };
    };
    responses: {
      /** @description Made. */
      201: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["InvitationMade"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `already-in` That person has this part already. · `roles-exclude` One person never both draws and judges in a project. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("already-in" | "roles-exclude") | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  withdrawInvitation: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        invitationId: components["schemas"]["InvitationIdInput"];
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done, nothing to tell. */
      204: {
        headers: {
          [name: string]: unknown;
        };
        content?: never;
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  leaveProject: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["RemovePartInput"];
      };
    };
    responses: {
      /** @description Done, nothing to tell. */
      204: {
        headers: {
          [name: string]: unknown;
        };
        content?: never;
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `last-owner` A project keeps an owner. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "last-owner" | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  follow: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description The socket is open. */
      101: {
        headers: {
          [name: string]: unknown;
        };
        content?: never;
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "origin-refused" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  listMembers: {
    parameters: {
      query?:
        | {
            after?: components["schemas"]["PersonIdInput"] | undefined;
            /** @description How many at most, up to 500. */
            limit?: string | undefined;
          }
        | undefined;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          /** @description Where the next page is, as `<address>; rel="next"` (RFC 8288); absent on the last. */
          link?: string | undefined;
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["ProjectMember"][];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  listNotes: {
    parameters: {
      query?:
        | {
            after?: components["schemas"]["NoteIdInput"] | undefined;
            /** @description How many at most, up to 500. */
            limit?: string | undefined;
          }
        | undefined;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          /** @description Where the next page is, as `<address>; rel="next"` (RFC 8288); absent on the last. */
          link?: string | undefined;
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["Note"][];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  writeNote: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NewNoteInput"];
      };
    };
    responses: {
      /** @description Made. */
      201: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["Note"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `id-reused` That id belongs to another act. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "id-reused" | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `element-unknown` No such element in that revision. */
      422: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "element-unknown" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  settleNote: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        noteId: components["schemas"]["NoteIdInput"];
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": Record<string, never> | null;
      };
    };
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["Note"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  seeNotices: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NoticesSeenInput"];
      };
    };
    responses: {
      /** @description Done, nothing to tell. */
      204: {
        headers: {
          [name: string]: unknown;
        };
        content?: never;
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  listOptionSets: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["OptionSetNow"][];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  openOptionSet: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NewOptionSetInput"];
      };
    };
    responses: {
      /** @description Made. */
      201: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["OptionSetOpened"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `id-reused` That id belongs to another act. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "id-reused" | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  keepOption: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
        setId: components["schemas"]["OptionSetIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NewOptionInput"];
      };
    };
    responses: {
      /** @description Made. */
      201: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["KeptOption"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `digest-mismatch` What is on the screen is not what is here now. · `draft-base-ahead` The draft is not that far yet. Reload. · `id-reused` That id belongs to another act. · `step-refused` It does not stand so that this can follow. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("digest-mismatch" | "draft-base-ahead" | "id-reused" | "step-refused") | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `nothing-drawn` The sheet is empty. Set a container first. */
      422: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "nothing-drawn" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  readOption: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        optionId: components["schemas"]["OptionIdInput"];
        projectId: components["schemas"]["ProjectIdInput"];
        setId: components["schemas"]["OptionSetIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["OptionDrawn"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  withdrawOption: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        optionId: components["schemas"]["OptionIdInput"];
        projectId: components["schemas"]["ProjectIdInput"];
        setId: components["schemas"]["OptionSetIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NewWithdrawalInput"];
      };
    };
    responses: {
      /** @description Made. */
      201: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["OptionWithdrawal"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `id-reused` That id belongs to another act. · `step-refused` It does not stand so that this can follow. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("id-reused" | "step-refused") | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  pickOption: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
        setId: components["schemas"]["OptionSetIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NewPickInput"];
      };
    };
    responses: {
      /** @description Made. */
      201: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["OptionPick"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `digest-mismatch` What is on the screen is not what is here now. · `id-reused` That id belongs to another act. · `step-refused` It does not stand so that this can follow. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("digest-mismatch" | "id-reused" | "step-refused") | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  readPeople: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["ProjectPeople"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  confirmEngineer: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        personId: components["schemas"]["PersonIdInput"];
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": Record<string, never> | null;
      };
    };
    responses: {
      /** @description Done, nothing to tell. */
      204: {
        headers: {
          [name: string]: unknown;
        };
        content?: never;
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  setExpiry: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        personId: components["schemas"]["PersonIdInput"];
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["SetExpiryInput"];
      };
    };
    responses: {
      /** @description Done, nothing to tell. */
      204: {
        headers: {
          [name: string]: unknown;
        };
        content?: never;
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  removePart: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        personId: components["schemas"]["PersonIdInput"];
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["RemovePartInput"];
      };
    };
    responses: {
      /** @description Done, nothing to tell. */
      204: {
        headers: {
          [name: string]: unknown;
        };
        content?: never;
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `last-owner` A project keeps an owner. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "last-owner" | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  readRegister: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["PlanCheckRegister"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  bringInComments: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["BringInCommentsInput"];
      };
    };
    responses: {
      /** @description Made. */
      201: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["PlanCheckRegister"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `id-reused` That id belongs to another act. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "id-reused" | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  followComment: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        commentId: string;
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NewCommentStepInput"];
      };
    };
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["PlanCheckComment"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `closer-refused` Whoever raised it closes it, and never whoever met it. · `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "closer-refused"
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `id-reused` That id belongs to another act. · `step-refused` It does not stand so that this can follow. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("id-reused" | "step-refused") | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  saveRegister: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          /** @description `attachment`, with a name for the file. */
          "content-disposition"?: string | undefined;
          [name: string]: unknown;
        };
        content: {
          "text/csv": string;
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  listQuestions: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["QuestionNow"][];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  askQuestion: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NewQuestionInput"];
      };
    };
    responses: {
      /** @description Made. */
      201: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["QuestionNow"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `id-reused` That id belongs to another act. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "id-reused" | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `element-unknown` No such element in that revision. */
      422: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "element-unknown" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  answerQuestion: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
        questionId: components["schemas"]["QuestionIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NewAnswerInput"];
      };
    };
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["QuestionNow"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `assessment-pending` This revision is not checked yet. · `digest-mismatch` What is on the screen is not what is here now. · `id-reused` That id belongs to another act. · `revision-superseded` There is a newer revision. · `step-refused` It does not stand so that this can follow. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | ("assessment-pending" | "digest-mismatch" | "id-reused" | "revision-superseded" | "step-refused")
              | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  followQuestion: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
        questionId: components["schemas"]["QuestionIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NewQuestionStepInput"];
      };
    };
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["QuestionNow"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `closer-refused` Whoever raised it closes it, and never whoever met it. · `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "closer-refused"
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `id-reused` That id belongs to another act. · `step-refused` It does not stand so that this can follow. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("id-reused" | "step-refused") | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  makeReaderLink: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NewReaderLinkInput"];
      };
    };
    responses: {
      /** @description Made. */
      201: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["ReaderLinkMade"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-kept` No more of these are kept. Take one away first. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-kept" | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  endReaderLink: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
        readerId: components["schemas"]["PersonIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done, nothing to tell. */
      204: {
        headers: {
          [name: string]: unknown;
        };
        content?: never;
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  readRecord: {
    parameters: {
      query?:
        | {
            after?: string | undefined;
            /** @description How many at most, up to 500. */
            limit?: string | undefined;
          }
        | undefined;
      header?:
        | {
            /** @description The tag of what is held already (RFC 9110 section 13.1.2). */
            "if-none-match"?: string | undefined;
          }
        | undefined;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          /** @description Names what is answered; sent back in `If-None-Match`, it is answered 304 while that stands. */
          etag?: string | undefined;
          /** @description Where the next page is, as `<address>; rel="next"` (RFC 8288); absent on the last. */
          link?: string | undefined;
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["RecordEntry"][];
        };
      };
      /** @description As it was under that tag. */
      304: {
        headers: {
          /** @description Names what is answered; sent back in `If-None-Match`, it is answered 304 while that stands. */
          etag?: string | undefined;
          /** @description Where the next page is, as `<address>; rel="next"` (RFC 8288); absent on the last. */
          link?: string | undefined;
          [name: string]: unknown;
        };
        content?: never;
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  saveRecordBundle: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          /** @description `attachment`, with a name for the file. */
          "content-disposition"?: string | undefined;
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["RecordBundle"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `signed-elsewhere` That part of the record was signed by another service, and is not signed here. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "signed-elsewhere" | undefined;
          };
        };
      };
      /** @description `signing-off` This service is not set up to sign heads of records. */
      422: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "signing-off" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  proveContinuation: {
    parameters: {
      query: {
        from: number;
        to?: number | undefined;
      };
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["ConsistencyProof"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `signed-elsewhere` That part of the record was signed by another service, and is not signed here. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "signed-elsewhere" | undefined;
          };
        };
      };
      /** @description `signing-off` This service is not set up to sign heads of records. */
      422: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "signing-off" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  proveEntry: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        number: number;
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["InclusionProof"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `signed-elsewhere` That part of the record was signed by another service, and is not signed here. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "signed-elsewhere" | undefined;
          };
        };
      };
      /** @description `signing-off` This service is not set up to sign heads of records. */
      422: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "signing-off" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  readSignedHead: {
    parameters: {
      query?:
        | {
            number?: number | undefined;
          }
        | undefined;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["SignedHead"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `signed-elsewhere` That part of the record was signed by another service, and is not signed here. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "signed-elsewhere" | undefined;
          };
        };
      };
      /** @description `signing-off` This service is not set up to sign heads of records. */
      422: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "signing-off" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  listRequests: {
    parameters: {
      query?:
        | {
            after?: string | undefined;
            /** @description How many at most, up to 500. */
            limit?: string | undefined;
          }
        | undefined;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          /** @description Where the next page is, as `<address>; rel="next"` (RFC 8288); absent on the last. */
          link?: string | undefined;
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["ChangeRequest"][];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  makeRequest: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NewRequestInput"];
      };
    };
    responses: {
      /** @description Made. */
      201: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["ChangeRequest"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `digest-mismatch` What is on the screen is not what is here now. · `id-reused` That id belongs to another act. · `revision-superseded` There is a newer revision. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("digest-mismatch" | "id-reused" | "revision-superseded") | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `draft-refused` The scheme cannot take this change. */
      422: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "draft-refused" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  answerRequest: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
        requestId: components["schemas"]["RequestIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["AnswerRequestInput"];
      };
    };
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["RequestAnswered"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `already-answered` This has been answered already. · `draft-base-ahead` The draft is not that far yet. Reload. · `draft-conflict` Someone changed the same thing first. Both versions are shown. · `id-reused` That id belongs to another act. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("already-answered" | "draft-base-ahead" | "draft-conflict" | "id-reused") | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `draft-refused` The scheme cannot take this change. */
      422: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "draft-refused" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  readRequestPremium: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
        requestId: components["schemas"]["RequestIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["RequestPremium"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  previewRequest: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
        requestId: components["schemas"]["RequestIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["RequestPreview"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  listRevisions: {
    parameters: {
      query?:
        | {
            after?: components["schemas"]["RevisionLetterInput"] | undefined;
            /** @description How many at most, up to 500. */
            limit?: string | undefined;
          }
        | undefined;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          /** @description Where the next page is, as `<address>; rel="next"` (RFC 8288); absent on the last. */
          link?: string | undefined;
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["RevisionSummary"][];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  sendRevision: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NewRevisionInput"];
      };
    };
    responses: {
      /** @description Taken; the rest follows. */
      202: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["RevisionSummary"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `digest-mismatch` What is on the screen is not what is here now. · `draft-base-ahead` The draft is not that far yet. Reload. · `id-reused` That id belongs to another act. · `revision-unchanged` Nothing has changed since the last revision. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("digest-mismatch" | "draft-base-ahead" | "id-reused" | "revision-unchanged") | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `nothing-drawn` The sheet is empty. Set a container first. */
      422: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "nothing-drawn" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  readRevision: {
    parameters: {
      query?: never;
      header?:
        | {
            /** @description The tag of what is held already (RFC 9110 section 13.1.2). */
            "if-none-match"?: string | undefined;
          }
        | undefined;
      path: {
        letter: components["schemas"]["RevisionLetterInput"];
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          /** @description Names what is answered; sent back in `If-None-Match`, it is answered 304 while that stands. */
          etag?: string | undefined;
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["Revision"];
        };
      };
      /** @description As it was under that tag. */
      304: {
        headers: {
          /** @description Names what is answered; sent back in `If-None-Match`, it is answered 304 while that stands. */
          etag?: string | undefined;
          [name: string]: unknown;
        };
        content?: never;
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  readAssessmentRun: {
    parameters: {
      query?: never;
      header?:
        | {
            /** @description The tag of what is held already (RFC 9110 section 13.1.2). */
            "if-none-match"?: string | undefined;
          }
        | undefined;
      path: {
        letter: components["schemas"]["RevisionLetterInput"];
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          /** @description Names what is answered; sent back in `If-None-Match`, it is answered 304 while that stands. */
          etag?: string | undefined;
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["AssessmentRun"];
        };
      };
      /** @description As it was under that tag. */
      304: {
        headers: {
          /** @description Names what is answered; sent back in `If-None-Match`, it is answered 304 while that stands. */
          etag?: string | undefined;
          [name: string]: unknown;
        };
        content?: never;
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  assessAgain: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        letter: components["schemas"]["RevisionLetterInput"];
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": Record<string, never> | null;
      };
    };
    responses: {
      /** @description Taken; the rest follows. */
      202: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["AssessmentRun"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `assessment-moved-on` The assessment of this revision has moved on. Look again. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "assessment-moved-on" | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  readStrengthReport: {
    parameters: {
      query?: never;
      header?:
        | {
            /** @description The tag of what is held already (RFC 9110 section 13.1.2). */
            "if-none-match"?: string | undefined;
          }
        | undefined;
      path: {
        letter: components["schemas"]["RevisionLetterInput"];
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          /** @description Names what is answered; sent back in `If-None-Match`, it is answered 304 while that stands. */
          etag?: string | undefined;
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["StrengthReport"];
        };
      };
      /** @description As it was under that tag. */
      304: {
        headers: {
          /** @description Names what is answered; sent back in `If-None-Match`, it is answered 304 while that stands. */
          etag?: string | undefined;
          [name: string]: unknown;
        };
        content?: never;
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  listRuns: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        letter: components["schemas"]["RevisionLetterInput"];
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["RecordedRun"][];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  stopAssessment: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        letter: components["schemas"]["RevisionLetterInput"];
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": Record<string, never> | null;
      };
    };
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["AssessmentRun"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `assessment-moved-on` The assessment of this revision has moved on. Look again. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "assessment-moved-on" | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  readWorking: {
    parameters: {
      query: {
        id: components["schemas"]["WorkingIdInput"];
      };
      header?:
        | {
            /** @description The tag of what is held already (RFC 9110 section 13.1.2). */
            "if-none-match"?: string | undefined;
          }
        | undefined;
      path: {
        letter: components["schemas"]["RevisionLetterInput"];
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          /** @description Names what is answered; sent back in `If-None-Match`, it is answered 304 while that stands. */
          etag?: string | undefined;
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["CheckWorking"];
        };
      };
      /** @description As it was under that tag. */
      304: {
        headers: {
          /** @description Names what is answered; sent back in `If-None-Match`, it is answered 304 while that stands. */
          etag?: string | undefined;
          [name: string]: unknown;
        };
        content?: never;
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  saveRevision: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        letter: components["schemas"]["RevisionLetterInput"];
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          /** @description `attachment`, with a name for the file. */
          "content-disposition"?: string | undefined;
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["SchemeFile"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  readPremium: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        letter: components["schemas"]["RevisionLetterInput"];
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["RevisionPremium"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  savePremium: {
    parameters: {
      query?:
        | {
            units?: ("SI" | "US") | undefined;
          }
        | undefined;
      header?: never;
      path: {
        letter: components["schemas"]["RevisionLetterInput"];
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          /** @description `attachment`, with a name for the file. */
          "content-disposition"?: string | undefined;
          [name: string]: unknown;
        };
        content: {
          "text/csv": string;
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  readPremiumSince: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        earlier: components["schemas"]["RevisionLetterInput"];
        letter: components["schemas"]["RevisionLetterInput"];
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["PremiumDifference"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  savePremiumSince: {
    parameters: {
      query?:
        | {
            units?: ("SI" | "US") | undefined;
          }
        | undefined;
      header?: never;
      path: {
        earlier: components["schemas"]["RevisionLetterInput"];
        letter: components["schemas"]["RevisionLetterInput"];
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          /** @description `attachment`, with a name for the file. */
          "content-disposition"?: string | undefined;
          [name: string]: unknown;
        };
        content: {
          "text/csv": string;
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  saveTable: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        letter: components["schemas"]["RevisionLetterInput"];
        projectId: components["schemas"]["ProjectIdInput"];
        table:
          | "units"
          | "openings"
          | "cut-plan"
          | "members"
          | "loads"
          | "checks"
          | "reactions"
          | "connections"
          | "survey"
          | "inspections"
          | "deferred"
          | "submittals";
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          /** @description `attachment`, with a name for the file. */
          "content-disposition"?: string | undefined;
          [name: string]: unknown;
        };
        content: {
          "text/csv": string;
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `assessment-pending` This revision is not checked yet. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "assessment-pending" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  readSeal: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["SealState"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  issueForSeal: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["IssueForSealInput"];
      };
    };
    responses: {
      /** @description Made. */
      201: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["SealIssueNow"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `present-password-wrong` The present password is another one. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "present-password-wrong"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `already-answered` This has been answered already. · `assessment-pending` This revision is not checked yet. · `digest-mismatch` What is on the screen is not what is here now. · `id-reused` That id belongs to another act. · `revision-superseded` There is a newer revision. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | ("already-answered" | "assessment-pending" | "digest-mismatch" | "id-reused" | "revision-superseded")
              | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `seal-hindered` Something stands in the way of the seal. */
      422: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "seal-hindered" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `busy` Too much is asked of the service at once. Try again in a few seconds. · `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("busy" | "unready") | undefined;
          };
        };
      };
    };
  };
  keepSealedCopy: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        issueId: components["schemas"]["SealIssueIdInput"];
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NewSealedCopyInput"];
      };
    };
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["SealIssueNow"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `digest-mismatch` What is on the screen is not what is here now. · `id-reused` That id belongs to another act. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("digest-mismatch" | "id-reused") | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  listSets: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["PermitSetRun"][];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  askForSet: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["AskForSetInput"];
      };
    };
    responses: {
      /** @description Taken; the rest follows. */
      202: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["PermitSetRun"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `assessment-pending` This revision is not checked yet. · `id-reused` That id belongs to another act. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("assessment-pending" | "id-reused") | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  readSet: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
        setId: string;
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["PermitSetRun"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  savePermitSet: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
        setId: string;
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          /** @description `attachment`, with a name for the file. */
          "content-disposition"?: string | undefined;
          [name: string]: unknown;
        };
        content: {
          "application/pdf": string;
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  stopSet: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
        setId: string;
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": Record<string, never> | null;
      };
    };
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["PermitSetRun"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `set-moved-on` The printing of this set has moved on. Look again. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "set-moved-on" | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  readSite: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["SiteNow"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  judgeSiteItem: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NewSiteJudgementInput"];
      };
    };
    responses: {
      /** @description Made. */
      201: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["SiteWord"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `closer-refused` Whoever raised it closes it, and never whoever met it. · `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "closer-refused"
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `digest-mismatch` What is on the screen is not what is here now. · `id-reused` That id belongs to another act. · `revision-superseded` There is a newer revision. · `step-refused` It does not stand so that this can follow. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("digest-mismatch" | "id-reused" | "revision-superseded" | "step-refused") | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  saySiteWord: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NewSiteWordInput"];
      };
    };
    responses: {
      /** @description Made. */
      201: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["SiteWord"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `closer-refused` Whoever raised it closes it, and never whoever met it. · `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "closer-refused"
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `digest-mismatch` What is on the screen is not what is here now. · `id-reused` That id belongs to another act. · `revision-superseded` There is a newer revision. · `step-refused` It does not stand so that this can follow. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("digest-mismatch" | "id-reused" | "revision-superseded" | "step-refused") | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  listStamps: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["StampNow"][];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  pressStamp: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["PressStampInput"];
      };
    };
    responses: {
      /** @description Made. */
      201: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["Stamp"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `present-password-wrong` The present password is another one. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "present-password-wrong"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `already-answered` This has been answered already. · `assessment-pending` This revision is not checked yet. · `digest-mismatch` What is on the screen is not what is here now. · `id-reused` That id belongs to another act. · `revision-superseded` There is a newer revision. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | ("already-answered" | "assessment-pending" | "digest-mismatch" | "id-reused" | "revision-superseded")
              | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `element-unknown` No such element in that revision. · `stamp-not-open` This stamp is not open on this revision. */
      422: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("element-unknown" | "stamp-not-open") | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `busy` Too much is asked of the service at once. Try again in a few seconds. · `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("busy" | "unready") | undefined;
          };
        };
      };
    };
  };
  readSurvey: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["SurveyNow"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  offerContainer: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NewSurveyedContainerInput"];
      };
    };
    responses: {
      /** @description Made. */
      201: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["SurveyedContainerNow"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `id-reused` That id belongs to another act. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "id-reused" | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  inspectContainer: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        containerId: components["schemas"]["SurveyedContainerIdInput"];
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NewInspectionInput"];
      };
    };
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["SurveyedContainerNow"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `closer-refused` Whoever raised it closes it, and never whoever met it. · `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "closer-refused"
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `digest-mismatch` What is on the screen is not what is here now. · `id-reused` That id belongs to another act. · `step-refused` It does not stand so that this can follow. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("digest-mismatch" | "id-reused" | "step-refused") | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  judgeContainer: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        containerId: components["schemas"]["SurveyedContainerIdInput"];
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NewJudgementInput"];
      };
    };
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["SurveyedContainerNow"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `closer-refused` Whoever raised it closes it, and never whoever met it. · `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "closer-refused"
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `id-reused` That id belongs to another act. · `step-refused` It does not stand so that this can follow. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("id-reused" | "step-refused") | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `container-unfit` This container cannot be taken there. */
      422: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "container-unfit" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  placeContainer: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        containerId: components["schemas"]["SurveyedContainerIdInput"];
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NewPositionInput"];
      };
    };
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["SurveyedContainerNow"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `closer-refused` Whoever raised it closes it, and never whoever met it. · `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "closer-refused"
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `id-reused` That id belongs to another act. · `step-refused` It does not stand so that this can follow. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("id-reused" | "step-refused") | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `container-unfit` This container cannot be taken there. · `draft-refused` The scheme cannot take this change. */
      422: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("container-unfit" | "draft-refused") | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  setSurveyLimits: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NewSurveyLimitsInput"];
      };
    };
    responses: {
      /** @description Made. */
      201: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["ProjectSurveyLimits"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `id-reused` That id belongs to another act. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "id-reused" | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  readThread: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["Thread"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  listWebhooks: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["Webhook"][];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  makeWebhook: {
    parameters: {
      query?: never;
      header?:
        | {
            /** @description Sent again within 24 hours with the same body, the first answer comes again and nothing is done twice. */
            "idempotency-key"?: string | undefined;
          }
        | undefined;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NewWebhookInput"];
      };
    };
    responses: {
      /** @description Made. */
      201: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["WebhookMade"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-kept` No more of these are kept. Take one away first. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-kept" | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `address-refused` Webhooks are not sent to that address. · `key-reused` That Idempotency-Key was used for something else. · `webhooks-off` This service is not set up to send webhooks. */
      422: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("address-refused" | "key-reused" | "webhooks-off") | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  endWebhook: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
        webhookId: string;
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done, nothing to tell. */
      204: {
        headers: {
          [name: string]: unknown;
        };
        content?: never;
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  listDeliveries: {
    parameters: {
      query?:
        | {
            /** @description The last one of the page before. */
            after?: string | undefined;
            /** @description How many at most, up to 500. */
            limit?: string | undefined;
          }
        | undefined;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
        webhookId: string;
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          /** @description Where the next page is, as `<address>; rel="next"` (RFC 8288); absent on the last. */
          link?: string | undefined;
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["WebhookDelivery"][];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `not-confirmed` The owner has not confirmed you as the engineer yet. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-confirmed" | "role-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  resumeWebhook: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        projectId: components["schemas"]["ProjectIdInput"];
        webhookId: string;
      };
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": Record<string, never> | null;
      };
    };
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["Webhook"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `not-confirmed` The owner has not confirmed you as the engineer yet. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `role-refused` Your role in this project does not do that. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              | (
                  | "csrf-refused"
                  | "not-confirmed"
                  | "origin-refused"
                  | "reading-only"
                  | "role-refused"
                  | "scope-refused"
                )
              | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  listRecordKeys: {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["ListedKey"][];
        };
      };
      /** @description `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "version-unknown" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  rotateRecordKey: {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": {
          /** @enum {boolean} */
          lost?: true | undefined;
        };
      };
    };
    responses: {
      /** @description Made. */
      201: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["ListedKey"][];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `administrator-only` Only an administrator of this service does that. · `csrf-refused` The page is out of date. Reload it and try again. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?:
              ("administrator-only" | "csrf-refused" | "origin-refused" | "reading-only" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `signed-elsewhere` That part of the record was signed by another service, and is not signed here. · `step-refused` It does not stand so that this can follow. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("signed-elsewhere" | "step-refused") | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `signing-off` This service is not set up to sign heads of records. */
      422: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "signing-off" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  readSession: {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["Session"];
        };
      };
      /** @description `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "scope-refused" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  signIn: {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["SignInInput"];
      };
    };
    responses: {
      /** @description Made. */
      201: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["Session"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `sign-in-refused` No one is known by that address and password. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "sign-in-refused" | undefined;
          };
        };
      };
      /** @description `origin-refused` The request comes from another site. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "origin-refused" | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `busy` Too much is asked of the service at once. Try again in a few seconds. · `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("busy" | "unready") | undefined;
          };
        };
      };
    };
  };
  signOut: {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done, nothing to tell. */
      204: {
        headers: {
          [name: string]: unknown;
        };
        content?: never;
      };
      /** @description `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `origin-refused` The request comes from another site. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("csrf-refused" | "origin-refused" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  listTokens: {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["AccessToken"][];
        };
      };
      /** @description `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `reading-only` A reader's link opens a project to read, and nothing else. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("reading-only" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  makeToken: {
    parameters: {
      query?: never;
      header?:
        | {
            /** @description Sent again within 24 hours with the same body, the first answer comes again and nothing is done twice. */
            "idempotency-key"?: string | undefined;
          }
        | undefined;
      path?: never;
      cookie?: never;
    };
    requestBody: {
      content: {
        "application/json": components["schemas"]["NewAccessTokenInput"];
      };
    };
    responses: {
      /** @description Made. */
      201: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": components["schemas"]["AccessTokenMade"];
        };
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `body-not-json` The body is not JSON. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "body-not-json" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("csrf-refused" | "origin-refused" | "reading-only" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `too-many-kept` No more of these are kept. Take one away first. */
      409: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-kept" | undefined;
          };
        };
      };
      /** @description `body-too-large` The request is larger than this service takes. */
      413: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "body-too-large" | undefined;
          };
        };
      };
      /** @description `media-type` Send application/json. */
      415: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "media-type" | undefined;
          };
        };
      };
      /** @description `key-reused` That Idempotency-Key was used for something else. */
      422: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "key-reused" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  withdrawToken: {
    parameters: {
      query?: never;
      header?: never;
      path: {
        tokenId: string;
      };
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done, nothing to tell. */
      204: {
        headers: {
          [name: string]: unknown;
        };
        content?: never;
      };
      /** @description `body-invalid` Something in the request is not as it must be. · `credentials-doubled` Send a session or an access token, not both. · `version-unknown` This version of the scheme is not known here. */
      400: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("body-invalid" | "credentials-doubled" | "version-unknown") | undefined;
          };
        };
      };
      /** @description `not-signed-in` Sign in first. · `token-refused` This access token is unknown, withdrawn or expired. */
      401: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("not-signed-in" | "token-refused") | undefined;
          };
        };
      };
      /** @description `csrf-refused` The page is out of date. Reload it and try again. · `origin-refused` The request comes from another site. · `reading-only` A reader's link opens a project to read, and nothing else. · `scope-refused` This access token does not reach that far. */
      403: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: ("csrf-refused" | "origin-refused" | "reading-only" | "scope-refused") | undefined;
          };
        };
      };
      /** @description `not-found` There is nothing here, or it is not yours to see. */
      404: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "not-found" | undefined;
          };
        };
      };
      /** @description `too-many-tries` Too many tries. Wait a minute. */
      429: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "too-many-tries" | undefined;
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  isAlive: {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": {
            /** @enum {string} */
            status: "up";
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
  isReady: {
    parameters: {
      query?: never;
      header?: never;
      path?: never;
      cookie?: never;
    };
    requestBody?: never;
    responses: {
      /** @description Done. */
      200: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/json": {
            /** @enum {string} */
            status: "ready";
          };
        };
      };
      /** @description `internal` Something broke here. Nothing was written. */
      500: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "internal" | undefined;
          };
        };
      };
      /** @description `unready` The service is starting or stopping. Try again shortly. */
      503: {
        headers: {
          [name: string]: unknown;
        };
        content: {
          "application/problem+json": components["schemas"]["Problem"] & {
            /** @enum {string} */
            code?: "unready" | undefined;
          };
        };
      };
    };
  };
}
