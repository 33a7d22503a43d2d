// Made by "npm run generate" from the server's OpenAPI document. Never edited.
export interface paths {
    "/api/v1/account": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Account
         * @description How one signs in.
         */
        get: operations["readAccount"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/account/confirmation-challenges": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Confirmation Challenge
         * @description A challenge for one of one's own passkeys, to confirm with.
         */
        post: operations["challengeConfirmation"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/account/confirmations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Confirmation
         * @description Show again that it is oneself, as at the sign-in: for ten minutes dangerous things may be done.
         */
        post: operations["confirmSession"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/account/passkey-challenges": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Passkey Challenge
         * @description A challenge for making a passkey.
         */
        post: operations["beginPasskey"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/account/passkeys": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Passkey
         * @description Add a passkey that answers such a challenge. Other sessions end.
         */
        post: operations["addPasskey"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/account/passkeys/{passkey_id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /**
         * Delete Passkey
         * @description Take a passkey away. Other sessions end.
         */
        delete: operations["removePasskey"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/account/password": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Password
         * @description Change the password. Other sessions end.
         */
        post: operations["changePassword"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/account/recovery-codes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Recovery Codes
         * @description Ten new recovery codes, shown once; the old ones are dead.
         */
        post: operations["renewRecoveryCodes"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/account/sessions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Sessions
         * @description Where one is signed in.
         */
        get: operations["listSessions"];
        put?: never;
        post?: never;
        /**
         * Delete Sessions
         * @description End every other session; with ``here`` this one too.
         */
        delete: operations["endSessions"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/account/sessions/{session_id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /**
         * Delete Session
         * @description End one session; it is refused at its next request.
         */
        delete: operations["endSession"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/account/totp": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Totp
         * @description A secret for an app for codes; it counts after its first right code.
         */
        post: operations["beginTotp"];
        /**
         * Delete Totp
         * @description Turn codes of an app off. Other sessions end.
         */
        delete: operations["removeTotp"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/account/totp/activations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Totp Activation
         * @description Take the secret into use by its first code. Other sessions end.
         */
        post: operations["activateTotp"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/audit": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Audit
         * @description Who saw and did what, newest first.
         */
        get: operations["readAudit"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/audit/chain": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Chain
         * @description Whether every row follows from the one before, and the head to note elsewhere.
         */
        get: operations["verifyAudit"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/audit/rows.csv": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Table
         * @description The rows as a table; no cell can be taken for a formula.
         */
        get: operations["exportAuditTable"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/audit/rows.jsonl": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Lines
         * @description The whole chain, a row a line, as an outsider needs it to check it.
         */
        get: operations["exportAuditChain"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/caseload": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Caseload
         * @description Every client, in the order in which they need someone, with the reason for each place.
         */
        get: operations["readCaseload"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/class-sheets": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Class Sheet
         * @description Movements on paper for a group class or a public talk, with no person's data; nothing is kept.
         */
        post: operations["printClassSheet"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Clients
         * @description All clients of the practice, by name.
         */
        get: operations["listClients"];
        put?: never;
        /**
         * Post Client
         * @description Take on a client.
         */
        post: operations["createClient"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Client
         * @description One client, with an ETag.
         */
        get: operations["readClient"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /**
         * Patch Client
         * @description Change what is known of a client; If-Match guards a colleague's change.
         */
        patch: operations["updateClient"];
        trace?: never;
    };
    "/api/v1/clients/{client_id}/adherence": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Adherence
         * @description Planned sessions with their status, and adherence as a range; by default over the last 28 days.
         */
        get: operations["readAdherence"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/clearances": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Clearance
         * @description Record that someone licensed has cleared the client; it answers one screening.
         */
        post: operations["recordClearance"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/devices": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Devices
         * @description A client's phones, newest first.
         */
        get: operations["listDevices"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/erasure": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Erasure
         * @description What would go with a client's record, and whether that is asked for.
         */
        get: operations["readErasure"];
        put?: never;
        /**
         * Post Erasure
         * @description Erase a client's record at once, or archive it and erase it later. The person's name confirms it.
         */
        post: operations["eraseClient"];
        /**
         * Delete Erasure
         * @description Take back an erasure whose day has not come.
         */
        delete: operations["keepClient"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/functional-scales": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Functional Scale
         * @description Keep a rating of what is hard for the client.
         */
        post: operations["rateActivities"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/invitations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Invitation
         * @description A code that pairs one phone, once.
         */
        post: operations["inviteClient"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/load": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Load
         * @description Load by day and week with monotony, strain and averages, and what each of them cannot tell.
         */
        get: operations["readLoad"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/messages": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Messages
         * @description Messages to a client, oldest first, with when each was read.
         */
        get: operations["listMessages"];
        put?: never;
        /**
         * Post Message
         * @description Send words to a client's phone.
         */
        post: operations["sendMessage"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/overview": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Overview
         * @description One client whole.
         */
        get: operations["readOverview"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/programs": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Programs
         * @description All versions, newest first, without their contents.
         */
        get: operations["listPrograms"];
        put?: never;
        /**
         * Post Program
         * @description Publish a version; it never changes again, and the phone has it at its next contact.
         */
        post: operations["publishProgram"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/programs/{number}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Program
         * @description One version by its number.
         */
        get: operations["readProgram"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/programs/checks": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Check
         * @description What does not fit, what would change for the client, and the minutes and load it asks for.
         */
        post: operations["checkProgram"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/programs/current": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Current
         * @description The newest version, with an ETag.
         */
        get: operations["readCurrentProgram"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/programs/current/sheet.pdf": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Sheet
         * @description The current program on paper; its QR code opens the app and holds no secret.
         */
        get: operations["printSheet"];
        put?: never;
        /**
         * Post Sheet
         * @description The same sheet with a new invitation: its QR code pairs one phone, once, within 72 hours.
         */
        post: operations["printSheetWithInvitation"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/programs/draft": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Draft
         * @description The program in the making, as it was last saved, with an ETag.
         */
        get: operations["readDraft"];
        /**
         * Put Draft
         * @description Keep the program in the making; it may still have problems. Both headers guard a colleague's draft.
         */
        put: operations["saveDraft"];
        post?: never;
        /**
         * Delete Draft
         * @description Throw the program in the making away; what is published stays.
         */
        delete: operations["dropDraft"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/programs/drafts/from-template": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post From Template
         * @description A template laid onto the calendar, to look over and change; nothing is saved.
         */
        post: operations["layOutTemplate"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/progressions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Progressions
         * @description Accept, edit or decline suggestions; all that is accepted becomes one new version.
         */
        post: operations["decideProgressions"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/readiness": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Readiness
         * @description What the trip asks beside what the client has shown, item by item, and the notes that were signed.
         */
        get: operations["readReadiness"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/readiness-notes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Note
         * @description Sign go, adapt or defer with the reasons; kept as signed, with everything that it rested on.
         */
        post: operations["signReadiness"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/record.zip": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Record
         * @description Everything that is held of a client, for programs and for people.
         */
        get: operations["exportRecord"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/refused-events": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Refused Events
         * @description What was received but could not be taken, whole, with its problem.
         */
        get: operations["listRefusedEvents"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/refused-events/{event_id}/retries": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Retry
         * @description Try a kept entry again, after a mend.
         */
        post: operations["retryRefusedEvent"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/screenings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Screenings
         * @description Screenings, newest first, with outcome, reasons and clearance; and where the client stands.
         */
        get: operations["listScreenings"];
        put?: never;
        /**
         * Post Screening
         * @description Keep answers taken with the practitioner; the newest screening counts.
         */
        post: operations["screenClient"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/season-plan": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Start
         * @description What a season was planned from, else what is known to plan one: the trip, the longest walk of late.
         */
        get: operations["readSeasonStart"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/season-plans": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Plan
         * @description The weeks up to the trip as the rules propose them, and what falls short; nothing is saved.
         */
        post: operations["planSeason"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/season-plans/contents": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Content
         * @description A season laid into a program, to look over and keep as a draft; nothing is saved.
         */
        post: operations["layOutSeason"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/season-plans/resumptions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Resumption
         * @description The rest of a season after a pause, a step back from where it stood; nothing is saved.
         */
        post: operations["resumeSeason"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/suggestions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Suggestions
         * @description What the last sessions suggest for each prescription, with rule, evidence, source and what would change it.
         */
        get: operations["listSuggestions"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/tests": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Client Tests
         * @description A client's results beside norm, other side and the time before; and what is hard for them.
         */
        get: operations["readClientTests"];
        put?: never;
        /**
         * Post Test
         * @description Keep a result, and read it.
         */
        post: operations["recordTest"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/timeline": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Timeline
         * @description What the client's phone has said, each entry once.
         */
        get: operations["readTimeline"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/trip": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Trip
         * @description The trip as it is kept, with an ETag; version 0 and no legs where nothing is.
         */
        get: operations["readTrip"];
        /**
         * Put Trip
         * @description Keep the whole trip in place of the one before; the phone hears of its days at its next contact.
         */
        put: operations["saveTrip"];
        post?: never;
        /**
         * Delete Trip
         * @description Take the trip away, here and on the phone; the program and its goal stay.
         */
        delete: operations["removeTrip"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/trip/demand": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Demand
         * @description What the trip asks of this client, leg by leg and day by day, with the band of the models.
         */
        get: operations["readDemand"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clients/{client_id}/trip/readings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Reading
         * @description The legs that a GPX file says, gzipped or not; nothing is saved. Without a split, one for each track or route.
         */
        post: operations["readRoute"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/devices/{device_id}/revocations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Revocation
         * @description Stop hearing a phone; what it sent stays.
         */
        post: operations["revokeDevice"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/devices/current/successors": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Successor
         * @description A number range of its own for a phone that finds its numbers used by a copy of itself.
         */
        post: operations["succeedDevice"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/drawings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Drawings
         * @description Every variant that is drawn, with the version of its moving drawing. Open to all, as the drawings are.
         */
        get: operations["listDrawings"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/exercises": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Exercises
         * @description The whole library and the practice's own movements, each with its variants, easiest first.
         */
        get: operations["listExercises"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/exercises/{code}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Exercise
         * @description One movement with its ladder of variants; doses in repetitions or seconds.
         */
        get: operations["readExercise"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/exercises/{code}/alternatives": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Alternatives
         * @description Other movements that can stand in for this one, the most like it first, each with its reasons.
         */
        get: operations["listAlternatives"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/exercises/{code}/figure.svg": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Figure
         * @description The drawing of one variant; not found where there is none. Open to all: it holds nothing personal.
         *
         *     A practice's own movement has a random key in the place of its code; who was told the key may see it.
         */
        get: operations["drawExercise"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/exercises/{code}/poses": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Poses
         * @description A drawn variant of the library to begin from.
         */
        get: operations["readPoses"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/exercises/own": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Own
         * @description Keep a movement of the practice's own. A drawing with findings is kept too, and not used.
         */
        post: operations["createOwnExercise"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/exercises/own/{own_code}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Own
         * @description The newest version of one of the practice's own movements, with an ETag.
         */
        get: operations["readOwnExercise"];
        /**
         * Put Own
         * @description Write the next version; programs that are published keep theirs.
         */
        put: operations["changeOwnExercise"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /**
         * Patch Own
         * @description Offer it no more, or again; programs that have it keep it.
         */
        patch: operations["archiveOwnExercise"];
        trace?: never;
    };
    "/api/v1/exercises/preview": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Preview
         * @description A movement with one change, drawn and looked over; nothing is kept.
         */
        post: operations["previewExercise"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/flags": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Flags
         * @description Findings on check-ins, the most urgent first, each with its rule, evidence and source.
         */
        get: operations["listFlags"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/flags/{flag_id}/decisions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Decision
         * @description Answer a flag. Easing off publishes a new program version; a message goes to the phone.
         */
        post: operations["decideFlag"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/functional-scales/{scale_id}/withdrawals": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Rating Withdrawal
         * @description Take back a rating that was a slip.
         */
        post: operations["withdrawRating"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/history": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get History
         * @description What all phones of this phone's client have said of its sessions, for a phone that is new.
         */
        get: operations["readHistory"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/live": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Live
         * @description Server-sent events: something changed, ask again. They carry ids only, and end with the session.
         */
        get: operations["listen"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/me": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Me
         * @description Who is signed in.
         */
        get: operations["readMe"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/pairings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Pairings
         * @description Phones that wait until someone has compared their number.
         */
        get: operations["listWaitingPairings"];
        put?: never;
        /**
         * Post Pairing
         * @description Turn a code into a phone's token, which is shown once.
         */
        post: operations["pairPhone"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/pairings/{pairing_id}/confirmations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Confirmation
         * @description Let in a phone whose number was compared.
         */
        post: operations["confirmPairing"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/pairings/{pairing_id}/refusals": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Refusal
         * @description Turn a waiting phone away.
         */
        post: operations["refusePairing"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/practice/invitations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Colleague
         * @description A link by which a colleague joins, once, within three days. An earlier one for this address is dead.
         */
        post: operations["inviteColleague"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/practice/invitations/{colleague_invitation_id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /**
         * Delete Colleague
         * @description Make such a link worthless.
         */
        delete: operations["withdrawColleague"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/practice/people": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get People
         * @description The people of the practice, those invited, and what it asks of them.
         */
        get: operations["listPeople"];
        put?: never;
        /**
         * Post Person
         * @description Join by a link with a password of one's own, or come back by one; signs in.
         */
        post: operations["joinPractice"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/practice/people/{practitioner_id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /**
         * Patch Colleague
         * @description Change someone's role, or whether they may sign in. Their sessions end.
         */
        patch: operations["changeColleague"];
        trace?: never;
    };
    "/api/v1/practice/people/{practitioner_id}/second-factor-resets": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Reset
         * @description Take a colleague's lost second factor away; they sign in by password and set up another. Their sessions end.
         */
        post: operations["resetSecondFactor"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/practice/people/{practitioner_id}/welcome-links": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Welcome Link
         * @description A link for a colleague who lost password and second factor: both are gone, and their sessions end.
         *
         *     By the link they choose a new password, once, within three days. An earlier one for them is dead.
         */
        post: operations["welcomeBack"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/practice/security": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /**
         * Patch Security
         * @description Require a second factor from everyone, or no longer.
         */
        patch: operations["changePracticeSecurity"];
        trace?: never;
    };
    "/api/v1/practice/status": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Status
         * @description How the installation stands: database, disk, backups, phones, what waits, the address; and what to do.
         */
        get: operations["readInstallation"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/practice/welcomes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Welcome
         * @description Whose practice a colleague's link leads to; the link stays good. Posted, so that no log has its code.
         */
        post: operations["readWelcome"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/practice/words": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /**
         * Put Words
         * @description Set what clients read about emergencies and replies. ``readMe`` has the present words.
         */
        put: operations["changePracticeWords"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/record.zip": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Own Record
         * @description Everything that the practice holds of this phone's client.
         */
        get: operations["exportOwnRecord"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/retention": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Retention
         * @description How long records are kept, who is past that time, and what is to be erased.
         */
        get: operations["readRetention"];
        /**
         * Put Retention
         * @description Say how long records of archived clients are kept. Nothing is erased by it.
         */
        put: operations["setRetention"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/screening/questions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Questions
         * @description What is asked before a program, for practitioner and phone.
         */
        get: operations["listScreeningQuestions"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/sign-in": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Sign In
         * @description Sign in with address, password and second factor; sets the session cookie. The session it replaces ends.
         *
         *     Where a second factor is missing the problem ``second-factor-needed`` names the ``ways`` there are.
         */
        post: operations["signIn"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/sign-in/challenges": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Challenge
         * @description A challenge for a passkey: of the one whose address and password are given, else of whoever has one.
         */
        post: operations["challengeSignIn"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/sign-in/passkeys": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Passkey Sign In
         * @description Sign in with a passkey alone, which must have verified its holder; sets the session cookie.
         */
        post: operations["signInWithPasskey"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/sign-out": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Sign Out
         * @description End this session, here and on the server.
         */
        post: operations["signOut"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/sources": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Sources
         * @description The works that the rules follow, and every number that changes advice with its source.
         */
        get: operations["listSources"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/sync": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Sync
         * @description Send events, get changes. Sending again changes nothing; what is acknowledged is on the disk.
         */
        post: operations["sync"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/templates": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Templates
         * @description Programs without dates: the practice's own, then those that come with the program.
         */
        get: operations["listTemplates"];
        put?: never;
        /**
         * Post Template
         * @description Keep a program without dates for the practice.
         */
        post: operations["createTemplate"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/templates/{template_id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /**
         * Delete Template
         * @description Take a template of the practice away; programs that were laid out from it stay.
         */
        delete: operations["deleteTemplate"];
        options?: never;
        head?: never;
        /**
         * Patch Template
         * @description Rename a template of the practice or describe it anew.
         */
        patch: operations["updateTemplate"];
        trace?: never;
    };
    "/api/v1/tests": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Tests
         * @description The baseline tests: protocol, cautions, possible range.
         */
        get: operations["listTests"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/tests/{result_id}/withdrawals": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post Test Withdrawal
         * @description Take back a result that was a slip.
         */
        post: operations["withdrawTest"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/healthz": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Healthz
         * @description The process answers.
         */
        get: operations["isAlive"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/metrics": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Get Metrics
         * @description Counts for an operator; to anybody else there is no such page.
         */
        get: operations["readMetrics"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/readyz": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Readyz
         * @description The database answers too.
         */
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
        /**
         * AccountOut
         * @description How one signs in.
         */
        AccountOut: {
            /**
             * Confirmed Until
             * Format: date-time
             */
            confirmed_until: string;
            /** Display Name */
            display_name: string;
            /** Email */
            email: string;
            /** Passkeys */
            passkeys: components["schemas"]["PasskeyOut"][];
            /** Passkeys Possible */
            passkeys_possible: boolean;
            /** Recovery Codes Left */
            recovery_codes_left: number;
            /** Required */
            required: boolean;
            role: components["schemas"]["Role"];
            /** Totp Since */
            totp_since: string | null;
        };
        /**
         * Action
         * @description What a practitioner can answer to a finding.
         * @enum {string}
         */
        Action: "acknowledge" | "ease_off" | "hold" | "message" | "clear" | "close";
        /**
         * ActorKind
         * @description Who acted.
         * @enum {string}
         */
        ActorKind: "practitioner" | "phone" | "nobody" | "server";
        /**
         * AddressOut
         * @description The address that phones are told; ``looked_at`` is None before the server has looked at it from outside.
         */
        AddressOut: {
            /** Certificate Until */
            certificate_until: string | null;
            /** Looked At */
            looked_at: string | null;
            /** Url */
            url: string;
        };
        /**
         * AdherenceOut
         * @description Adherence of one client from one day to another.
         */
        AdherenceOut: {
            by_session: components["schemas"]["RatioOut"];
            by_set: components["schemas"]["RatioOut"];
            /** Client Id */
            client_id: string;
            /**
             * From
             * Format: date
             */
            from: string;
            /** Sessions */
            sessions: components["schemas"]["SessionOut"][];
            /**
             * To
             * Format: date
             */
            to: string;
        };
        /**
         * AdherencePair
         * @description Adherence over the last 7 and the last 28 days, today included.
         */
        AdherencePair: {
            days_7: components["schemas"]["SpanAdherence"];
            days_28: components["schemas"]["SpanAdherence"];
        };
        /**
         * Alternative
         * @description Another movement that the client may do instead, with a dose of its own (decision 0007).
         */
        "Alternative-Input": {
            /** Exercise */
            exercise: string;
            /**
             * Hold S
             * @description Hold in seconds, 1 to 300.
             */
            hold_s?: number | null;
            /**
             * Load Kg
             * @description Weight in kg, 0 to 200.
             */
            load_kg?: number | null;
            /**
             * Reason
             * @description Why or when, in the practitioner's words; the client sees it.
             * @default
             */
            reason: string;
            /**
             * Reps High
             * @description Most repetitions in a set, 1 to 50.
             */
            reps_high?: number | null;
            /**
             * Reps Low
             * @description Fewest repetitions in a set, 1 to 50.
             */
            reps_low?: number | null;
            /** @description Each side in turn, or both together. */
            sides: components["schemas"]["Sides"];
            /** Variant */
            variant: string;
        };
        /**
         * Alternative
         * @description Another movement that the client may do instead, with a dose of its own (decision 0007).
         */
        "Alternative-Output": {
            /** Exercise */
            exercise: string;
            /**
             * Hold S
             * @description Hold in seconds, 1 to 300.
             */
            hold_s: number | null;
            /**
             * Load Kg
             * @description Weight in kg, 0 to 200.
             */
            load_kg: number | null;
            /**
             * Reason
             * @description Why or when, in the practitioner's words; the client sees it.
             * @default
             */
            reason: string;
            /**
             * Reps High
             * @description Most repetitions in a set, 1 to 50.
             */
            reps_high: number | null;
            /**
             * Reps Low
             * @description Fewest repetitions in a set, 1 to 50.
             */
            reps_low: number | null;
            /** @description Each side in turn, or both together. */
            sides: components["schemas"]["Sides"];
            /** Variant */
            variant: string;
        };
        /**
         * AlternativeOut
         * @description A movement that can stand in for another one, on the variant that comes nearest.
         */
        AlternativeOut: {
            /** Exercise */
            exercise: string;
            /** Name */
            name: string;
            /**
             * Reasons
             * @description Why it is offered, and what else changes with it.
             */
            reasons: components["schemas"]["steadfoot__exercises__schemas__ReasonOut"][];
            /** Variant */
            variant: string;
            /** Variant Name */
            variant_name: string;
        };
        /**
         * AlternativesOut
         * @description What fits, the most like the prescribed movement first.
         */
        AlternativesOut: {
            /** Items */
            items: components["schemas"]["AlternativeOut"][];
            /**
             * Nothing Fits
             * @description Why nothing fits, in a sentence; null where something does.
             */
            nothing_fits: string | null;
        };
        /**
         * Answer
         * @description Something that may be answered to a flag.
         */
        Answer: {
            action: components["schemas"]["Action"];
            /** Label Key */
            label_key: string;
            /** Needs Message */
            needs_message: boolean;
        };
        /**
         * Arm
         * @description An arm told by its angles; shoulder: flexion, abduction, external rotation.
         */
        Arm: {
            /** Elbow */
            elbow?: number | null;
            /** Grip */
            grip?: boolean | null;
            /** Shoulder */
            shoulder?: [
                number,
                number,
                number
            ] | null;
            /** Wrist */
            wrist?: number | null;
        };
        /**
         * AuditPage
         * @description Rows, newest first.
         */
        AuditPage: {
            /** Clients */
            clients: components["schemas"]["Named"][];
            /** Items */
            items: components["schemas"]["AuditRow"][];
            /**
             * Next
             * @description Ask again with this as `below` for older rows; null: these are the last.
             */
            next: number | null;
            /** Practitioners */
            practitioners: components["schemas"]["Named"][];
        };
        /**
         * AuditRow
         * @description One act, with the names that its ids have today; null where nobody has that id any more.
         */
        AuditRow: {
            /**
             * Action
             * @description An operation's id of this document, or a job's name.
             */
            action: string;
            /** Actor Id */
            actor_id: string | null;
            actor_kind: components["schemas"]["ActorKind"];
            /** Actor Name */
            actor_name: string | null;
            /**
             * At
             * Format: date-time
             */
            at: string;
            /** Number */
            number: number;
            outcome: components["schemas"]["Outcome"];
            /** Subject Id */
            subject_id: string | null;
            /** Subject Name */
            subject_name: string | null;
            /**
             * Times
             * @description How many calls the row stands for: more than one in a flood of refusals.
             */
            times: number;
        };
        /**
         * Away
         * @description Days without any session, both ends included.
         */
        Away: {
            /**
             * First
             * Format: date
             */
            first: string;
            /**
             * Last
             * Format: date
             */
            last: string;
        };
        /**
         * BackupOut
         * @description The last good backup and the last attempt; ``problem`` is why that one failed, in English, or empty.
         */
        BackupOut: {
            /** Made At */
            made_at: string | null;
            /** Problem */
            problem: string;
            /** Size Bytes */
            size_bytes: number | null;
            /** Tried At */
            tried_at: string | null;
            /** Verified At */
            verified_at: string | null;
        };
        /**
         * Because
         * @description What a reason is about, in the order in which reasons are told.
         * @enum {string}
         */
        Because: "trains" | "spares" | "kit" | "sides" | "difficulty" | "dose";
        /**
         * Bend
         * @description Bend of spine or neck: forward, to the right, turned to the left are positive.
         */
        Bend: {
            /** Flexion */
            flexion?: number | null;
            /** Lean */
            lean?: number | null;
            /** Turn */
            turn?: number | null;
        };
        /**
         * Cardio
         * @description Other endurance work.
         */
        "Cardio-Input": {
            /** Activity */
            activity: string;
            /**
             * Expected Effort
             * @description Expected session effort, 0 to 10.
             */
            expected_effort: number;
            /**
             * Expected Minutes
             * @description Minutes; null: estimated from the dose.
             */
            expected_minutes?: number | null;
            /**
             * Key
             * @description Unique in the program; kept when the program is edited.
             */
            key: string;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            kind: "cardio";
            /** Name */
            name: string;
            /**
             * Note
             * @default
             */
            note: string;
        };
        /**
         * Cardio
         * @description Other endurance work.
         */
        "Cardio-Output": {
            /** Activity */
            activity: string;
            /**
             * Expected Effort
             * @description Expected session effort, 0 to 10.
             */
            expected_effort: number;
            /**
             * Expected Minutes
             * @description Minutes; null: estimated from the dose.
             */
            expected_minutes: number | null;
            /**
             * Key
             * @description Unique in the program; kept when the program is edited.
             */
            key: string;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            kind: "cardio";
            /** Name */
            name: string;
            /**
             * Note
             * @default
             */
            note: string;
        };
        /**
         * Caseload
         * @description Every client of the practice who is not archived, in the order in which they need someone.
         */
        Caseload: {
            /**
             * As Of
             * Format: date-time
             */
            as_of: string;
            headline: components["schemas"]["Headline"];
            /** Items */
            items: components["schemas"]["Row"][];
            /**
             * Today
             * Format: date
             */
            today: string;
        };
        /**
         * Caution
         * @description What a person should know before they sign. The first two do not go together with "go".
         * @enum {string}
         */
        Caution: "symptom" | "clearance_required" | "clearance_recommended" | "not_screened" | "open_findings";
        /**
         * ChainState
         * @description Whether the practice's chain is whole, as walked just now.
         */
        ChainState: {
            /**
             * Broken At
             * @description Number of the first row that does not fit.
             */
            broken_at: number | null;
            /**
             * Head
             * @description Digest of the newest row: note it where this server cannot write.
             */
            head: string;
            /** Rows */
            rows: number;
            /** Whole */
            whole: boolean;
            /** Why */
            why: string;
        };
        /**
         * ChallengeBody
         * @description Whose passkeys may answer, by address and password; without them any that verifies its holder.
         */
        ChallengeBody: {
            /** Email */
            email: string;
            /** Password */
            password: string;
        };
        /**
         * ChangePart
         * @description The change of one side, or of one activity.
         */
        ChangePart: {
            /**
             * Better
             * @description Null unless the change is real
             */
            better: boolean | null;
            /** Is Real */
            is_real: boolean;
            /**
             * Of
             * @description left, right or the activity; null where there is only one
             */
            of: string | null;
            /** Words */
            words: string;
        };
        /**
         * CheckBody
         * @description A program to look over.
         */
        CheckBody: {
            content: components["schemas"]["ProgramContent-Input"];
        };
        /**
         * ChecksOut
         * @description What does not fit, what would change for the client, and what it all asks for.
         */
        ChecksOut: {
            /** Changes */
            changes: string[];
            /** Problems */
            problems: components["schemas"]["ProblemOut"][];
            /** Sessions */
            sessions: components["schemas"]["SessionSum"][];
            /** Weeks */
            weeks: components["schemas"]["WeekSum"][];
        };
        /**
         * Choice
         * @description What was decided about one suggestion. Declining needs a reason; ``edited`` stands in the suggestion's place.
         */
        Choice: {
            /**
             * Action
             * @enum {string}
             */
            action: "accept" | "decline";
            edited?: components["schemas"]["Prescription-Input"] | null;
            /**
             * Reason
             * @default
             */
            reason: string;
            /** Suggestion Id */
            suggestion_id: string;
        };
        /**
         * Circuit
         * @description Prescriptions done in order, for a number of rounds.
         */
        "Circuit-Input": {
            /**
             * Expected Effort
             * @description Expected session effort, 0 to 10.
             */
            expected_effort: number;
            /**
             * Expected Minutes
             * @description Minutes; null: estimated from the dose.
             */
            expected_minutes?: number | null;
            /**
             * Key
             * @description Unique in the program; kept when the program is edited.
             */
            key: string;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            kind: "circuit";
            /** Name */
            name: string;
            /**
             * Note
             * @default
             */
            note: string;
            /** Prescriptions */
            prescriptions: components["schemas"]["Prescription-Input"][];
            /**
             * Rounds
             * @description Rounds, 1 to 10.
             */
            rounds: number;
        };
        /**
         * Circuit
         * @description Prescriptions done in order, for a number of rounds.
         */
        "Circuit-Output": {
            /**
             * Expected Effort
             * @description Expected session effort, 0 to 10.
             */
            expected_effort: number;
            /**
             * Expected Minutes
             * @description Minutes; null: estimated from the dose.
             */
            expected_minutes: number | null;
            /**
             * Key
             * @description Unique in the program; kept when the program is edited.
             */
            key: string;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            kind: "circuit";
            /** Name */
            name: string;
            /**
             * Note
             * @default
             */
            note: string;
            /** Prescriptions */
            prescriptions: components["schemas"]["Prescription-Output"][];
            /**
             * Rounds
             * @description Rounds, 1 to 10.
             */
            rounds: number;
        };
        /**
         * ClassSheetBody
         * @description A sheet for a group class or a public talk. It names no person but the practice.
         */
        ClassSheetBody: {
            /**
             * About
             * @description A line under the title.
             * @default
             */
            about: string;
            /**
             * @description Of the sheet's own words.
             * @default en
             */
            language: components["schemas"]["Language"];
            /**
             * Large
             * @description Large print.
             * @default false
             */
            large: boolean;
            /** Movements */
            movements: components["schemas"]["PickBody"][];
            /** @default a4 */
            paper: components["schemas"]["Paper"];
            /** Title */
            title: string;
        };
        /**
         * Clearance
         * @description What has to happen before a program.
         * @enum {string}
         */
        Clearance: "not_needed" | "recommended" | "required";
        /**
         * ClearanceBody
         * @description Who has said that the client may train. Without a screening it answers the newest one.
         */
        ClearanceBody: {
            /** Given By */
            given_by: string;
            /**
             * Given On
             * @description The client's today if left out
             */
            given_on?: string | null;
            /**
             * Note
             * @default
             */
            note: string;
            /** Screening Id */
            screening_id?: string | null;
        };
        /**
         * ClearanceOut
         * @description A clearance that was recorded.
         */
        ClearanceOut: {
            /** Given By */
            given_by: string;
            /**
             * Given On
             * Format: date
             */
            given_on: string;
            /** Id */
            id: string;
            /** Note */
            note: string;
            /**
             * Recorded At
             * Format: date-time
             */
            recorded_at: string;
            /**
             * Recorded By
             * @description Name of the practitioner
             */
            recorded_by: string;
            /** Screening Id */
            screening_id: string;
        };
        /**
         * ClientBody
         * @description A new client.
         */
        ClientBody: {
            /** Birth Year */
            birth_year?: number | null;
            /** Body Mass Kg */
            body_mass_kg?: number | null;
            /** Display Name */
            display_name: string;
            /** Height Cm */
            height_cm?: number | null;
            /**
             * Kit
             * @default []
             */
            kit: components["schemas"]["Kit"][];
            /**
             * Note
             * @default
             */
            note: string;
            /** @description As the norms of tests are split by it */
            sex?: components["schemas"]["Sex"] | null;
            /**
             * @default {
             *       "pain_stop": 6
             *     }
             */
            thresholds: components["schemas"]["Thresholds"];
            /**
             * Time Zone
             * @description IANA name; the practice's own if left out
             */
            time_zone?: string | null;
            /**
             * Usual Pain
             * @description Pain on a usual day before the program, 0 to 10
             * @default 0
             */
            usual_pain: number;
        };
        /**
         * ClientList
         * @description All clients of the practice.
         */
        ClientList: {
            /** Items */
            items: components["schemas"]["ClientOut"][];
        };
        /**
         * ClientOut
         * @description A client, as the practice knows them.
         */
        ClientOut: {
            /** Archived At */
            archived_at: string | null;
            /** Birth Year */
            birth_year: number | null;
            /** Body Mass Kg */
            body_mass_kg: number | null;
            /**
             * Created At
             * Format: date-time
             */
            created_at: string;
            /** Display Name */
            display_name: string;
            /** Height Cm */
            height_cm: number | null;
            /** Id */
            id: string;
            /** Kit */
            kit: components["schemas"]["Kit"][];
            /** Note */
            note: string;
            sex: components["schemas"]["Sex"] | null;
            thresholds: components["schemas"]["Thresholds"];
            /** Time Zone */
            time_zone: string;
            /** Usual Pain */
            usual_pain: number;
            /** Version */
            version: number;
        };
        /**
         * ClientPatch
         * @description What to change; what is left out stays.
         */
        ClientPatch: {
            /** Archived */
            archived?: boolean | null;
            /** Birth Year */
            birth_year?: number | null;
            /** Body Mass Kg */
            body_mass_kg?: number | null;
            /** Display Name */
            display_name?: string | null;
            /** Height Cm */
            height_cm?: number | null;
            /** Kit */
            kit?: components["schemas"]["Kit"][] | null;
            /** Note */
            note?: string | null;
            sex?: components["schemas"]["Sex"] | null;
            thresholds?: components["schemas"]["Thresholds"] | null;
            /** Time Zone */
            time_zone?: string | null;
            /** Usual Pain */
            usual_pain?: number | null;
        };
        /**
         * ClientTests
         * @description The tests of which the client has results, and the ratings of what is hard.
         */
        ClientTests: {
            functional_scale: components["schemas"]["FunctionalScaleOut"];
            /** Items */
            items: components["schemas"]["TestItem"][];
        };
        /**
         * Closing
         * @description What would close the gap.
         * @enum {string}
         */
        Closing: "nothing" | "grow" | "say_trip" | "log_a_walk" | "two_in_a_row" | "easy_middle" | "same_walk_easier" | "rate_a_walk" | "settle_pain" | "ask_pain" | "take_test" | "train_and_test" | "follow";
        /**
         * Colleague
         * @description Someone of the practice, as an owner sees them.
         */
        Colleague: {
            /**
             * Created At
             * Format: date-time
             */
            created_at: string;
            /** Disabled At */
            disabled_at: string | null;
            /** Display Name */
            display_name: string;
            /** Email */
            email: string;
            /** Id */
            id: string;
            role: components["schemas"]["Role"];
            /** Second Factor */
            second_factor: boolean;
        };
        /**
         * ColleagueBody
         * @description Who shall join the practice.
         */
        ColleagueBody: {
            /** Display Name */
            display_name: string;
            /** Email */
            email: string;
            role: components["schemas"]["Role"];
        };
        /**
         * ColleagueChange
         * @description What to change of a colleague; what is left out stays.
         */
        ColleagueChange: {
            /** Disabled */
            disabled?: boolean | null;
            role?: components["schemas"]["Role"] | null;
        };
        /**
         * ColleagueLink
         * @description A link by which a colleague joins or comes back, once. It is shown now and never again.
         */
        ColleagueLink: {
            /**
             * Expires At
             * Format: date-time
             */
            expires_at: string;
            /** Id */
            id: string;
            /** Url */
            url: string;
        };
        /**
         * ConfirmationBody
         * @description The number that the phone shows, as the client reads it out.
         */
        ConfirmationBody: {
            /** Check Number */
            check_number?: string | null;
        };
        /**
         * ConfirmBody
         * @description The sign-in data again; without a password a passkey that verifies its holder.
         */
        ConfirmBody: {
            /** Code */
            code?: string | null;
            passkey?: components["schemas"]["PasskeyAnswer"] | null;
            /** Password */
            password?: string | null;
            /** Recovery Code */
            recovery_code?: string | null;
        };
        /**
         * ControlOut
         * @description A number that can be set.
         */
        ControlOut: {
            /** High */
            high: number;
            /**
             * Length
             * @description A fraction of stature; otherwise degrees.
             */
            length: boolean;
            /** Low */
            low: number;
            /** Path */
            path: string;
            /** Value */
            value: number;
        };
        /**
         * CountedPart
         * @description Ascent and descent if a height counts once it lies so many metres from the last one counted.
         */
        CountedPart: {
            /** Ascent M */
            ascent_m: number;
            /** Descent M */
            descent_m: number;
            /** Threshold M */
            threshold_m: number;
        };
        /**
         * DatabaseOut
         * @description Kind and size; ``log_bytes`` is SQLite's write-ahead log.
         */
        DatabaseOut: {
            /**
             * Kind
             * @enum {string}
             */
            kind: "sqlite" | "postgresql";
            /** Log Bytes */
            log_bytes: number | null;
            /** Schema Revision */
            schema_revision: string;
            /** Size Bytes */
            size_bytes: number;
        };
        /**
         * DayDemandOut
         * @description What a day asks, all its legs together.
         */
        DayDemandOut: {
            /** Ascent M */
            ascent_m: number | null;
            /** Day */
            day: number;
            /** Descent M */
            descent_m: number | null;
            /** Descent Work Kj */
            descent_work_kj: number | null;
            /** Distance Km */
            distance_km: number;
            /** High Kcal */
            high_kcal: number | null;
            /** Hours */
            hours: number;
            /** Low Kcal */
            low_kcal: number | null;
        };
        /**
         * DayLoad
         * @description Load of one day: effort times minutes.
         */
        DayLoad: {
            /**
             * Day
             * Format: date
             */
            day: string;
            /** Load */
            load: number;
        };
        /**
         * DayMark
         * @description A planned session in short.
         */
        DayMark: {
            /**
             * Date
             * Format: date
             */
            date: string;
            /** Name */
            name: string;
            /** Planned Id */
            planned_id: string;
            /**
             * Settled
             * @description False while the phone may hold more than it has told.
             */
            settled: boolean;
            status: components["schemas"]["Status"];
        };
        /**
         * Decided
         * @description The flag after the answer, and the version that was published with it.
         */
        Decided: {
            flag: components["schemas"]["Flag"];
            /** Program Number */
            program_number: number | null;
        };
        /**
         * DecisionBody
         * @description A practitioner's answer. ``hold`` and ``message`` need a message, ``close`` and ``clear`` a note.
         *
         *     ``clear`` (spoken to, may train again) answers red-flag symptoms only, also after another answer.
         */
        DecisionBody: {
            action: components["schemas"]["Action"];
            /**
             * Message
             * @default
             */
            message: string;
            /**
             * Note
             * @default
             */
            note: string;
        };
        /**
         * DecisionOut
         * @description What was answered, when, by whom; the program version where one was published.
         */
        DecisionOut: {
            action: components["schemas"]["Action"];
            /** By */
            by: string;
            /**
             * Decided At
             * Format: date-time
             */
            decided_at: string;
            /** Message */
            message: string;
            /** Note */
            note: string;
            /** Program Number */
            program_number: number | null;
        };
        /**
         * DeclinedOut
         * @description A suggestion that was declined on this very evidence; accepting it is still possible.
         */
        DeclinedOut: {
            /** By */
            by: string;
            /**
             * Can Accept
             * @description Whether accepting changes the program.
             */
            can_accept: boolean;
            /**
             * Decided At
             * Format: date-time
             */
            decided_at: string;
            /**
             * Effect
             * @description What the phone would show; null where nothing would change.
             */
            effect: string | null;
            /** Exercise */
            exercise: string;
            /** Id */
            id: string;
            kind: components["schemas"]["Kind"];
            now: components["schemas"]["Prescription-Output"];
            /**
             * Prescription
             * @description Key of the prescription.
             */
            prescription: string;
            /** Reason */
            reason: string;
            /** Reasons */
            reasons: components["schemas"]["ReasonEvidence"][];
            rule: components["schemas"]["ProgressionRule"];
            /** Sentence */
            sentence: string;
            /**
             * Session
             * @description Name of the circuit that it belongs to.
             */
            session: string;
            /** Source */
            source: string;
            suggestion: components["schemas"]["Suggested"];
            /** @description The prescription after accepting, to be edited; null: as it is. */
            then: components["schemas"]["Prescription-Output"] | null;
            /** Variant */
            variant: string;
            /** Would Change */
            would_change: string;
        };
        /**
         * Delivery
         * @description How a code reaches the client: shown in the same room, or sent.
         * @enum {string}
         */
        Delivery: "in_person" | "link";
        /**
         * DemandOut
         * @description What the trip asks of this client, computed now.
         */
        DemandOut: {
            /** Body Mass Kg */
            body_mass_kg: number | null;
            /** Days */
            days: components["schemas"]["DayDemandOut"][];
            /** Legs */
            legs: components["schemas"]["LegDemandOut"][];
            /**
             * Pace
             * @description Own time over the rule's; null: not known, the rule's is used
             */
            pace: number | null;
            /** Pack Habit Percent */
            pack_habit_percent: number;
            /** Six Minute Walk M */
            six_minute_walk_m: number | null;
            /**
             * Sources
             * @description Keys of the bibliography
             */
            sources: string[];
            /** Walks */
            walks: number;
            /** Walks Needed */
            walks_needed: number;
        };
        /**
         * DescentOut
         * @description A steep piece downhill: where it starts, its length, metres lost, grade in percent (negative).
         */
        DescentOut: {
            /** Descent M */
            descent_m: number;
            /** From Km */
            from_km: number;
            /** Grade Percent */
            grade_percent: number;
            /** Length M */
            length_m: number;
        };
        /**
         * DeviceList
         * @description All phones a client ever paired, newest first.
         */
        DeviceList: {
            /** Items */
            items: components["schemas"]["DeviceOut"][];
        };
        /**
         * DeviceOut
         * @description A phone of a client.
         */
        DeviceOut: {
            /** Acknowledged Through */
            acknowledged_through: number;
            /** Client Id */
            client_id: string;
            /** Id */
            id: string;
            /** Label */
            label: string;
            /** Last Heard At */
            last_heard_at: string | null;
            /**
             * Paired At
             * Format: date-time
             */
            paired_at: string;
            /** Revoked At */
            revoked_at: string | null;
            waiting: components["schemas"]["WaitingMark"] | null;
        };
        /**
         * DiskOut
         * @description The disk on which the data folder lies.
         */
        DiskOut: {
            /** Free Bytes */
            free_bytes: number;
            /** Total Bytes */
            total_bytes: number;
        };
        /**
         * Doubt
         * @description Why an item is less sure than it looks.
         * @enum {string}
         */
        Doubt: "measure" | "once" | "old" | "silent" | "trip_not_said" | "lighter" | "self_rated" | "norm_no_limit" | "no_norm" | "one_side" | "sides_differ";
        /**
         * DraftBody
         * @description A program in the making.
         */
        DraftBody: {
            /**
             * Base Number
             * @description Number of the published version it was begun from.
             */
            base_number?: number | null;
            content: components["schemas"]["ProgramContent-Input"];
        };
        /**
         * DraftOut
         * @description A draft as it was last saved.
         */
        DraftOut: {
            /** Base Number */
            base_number: number | null;
            content: components["schemas"]["ProgramContent-Output"];
            /**
             * Saved At
             * Format: date-time
             */
            saved_at: string;
            saved_by: components["schemas"]["PersonOut"];
            /** Version */
            version: number;
        };
        /**
         * Drag
         * @description A joint taken hold of and brought to a spot on paper.
         */
        Drag: {
            /**
             * Point
             * @description Name of a handle.
             */
            point: string;
            /**
             * To
             * @description x and y in drawing units, y down.
             */
            to: [
                number,
                number
            ];
        };
        /**
         * DrawingOut
         * @description A moving drawing that the library has.
         */
        DrawingOut: {
            /** Exercise */
            exercise: string;
            /**
             * Ready
             * @description Whether it is finished. One that is not is computed when asked for, in a second.
             */
            ready: boolean;
            /** Variant */
            variant: string;
            /**
             * Version
             * @description Another one whenever the drawing may look different.
             */
            version: string;
        };
        /**
         * DrawingsOut
         * @description Every moving drawing: what a phone may keep for the time without a network.
         */
        DrawingsOut: {
            /** Items */
            items: components["schemas"]["DrawingOut"][];
        };
        /**
         * Due
         * @description An archived client who is past the practice's time.
         */
        Due: {
            /**
             * Archived At
             * Format: date-time
             */
            archived_at: string;
            /** Client Id */
            client_id: string;
            /** Display Name */
            display_name: string;
            /**
             * Due Since
             * Format: date-time
             */
            due_since: string;
        };
        /**
         * EnergyOut
         * @description Energy in kcal with the band of the models that hold, rates in MET and beside the six-minute walk.
         */
        EnergyOut: {
            /** High Kcal */
            high_kcal: number;
            /** Kcal */
            kcal: number;
            /** Low Kcal */
            low_kcal: number;
            /** Mean Met */
            mean_met: number;
            /** Mean Percent Shown */
            mean_percent_shown: number | null;
            /** Metres By Model */
            metres_by_model: {
                [key: string]: number;
            };
            /** Pack Percent */
            pack_percent: number;
            /** Peak Met */
            peak_met: number;
            /** Peak Percent Shown */
            peak_percent_shown: number | null;
            /** Unknown M */
            unknown_m: number;
            /** Zigzag M */
            zigzag_m: number;
        };
        /**
         * ErasureBody
         * @description The person's name, typed to confirm.
         */
        ErasureBody: {
            /** Name */
            name: string;
            when: components["schemas"]["When"];
        };
        /**
         * ErasureDone
         * @description What came of it: erased, or to be erased.
         */
        ErasureDone: {
            asked: components["schemas"]["ErasureOut"] | null;
            /** Erased */
            erased: boolean;
        };
        /**
         * ErasureOut
         * @description An erasure that is asked for.
         */
        ErasureOut: {
            /**
             * Asked At
             * Format: date-time
             */
            asked_at: string;
            /** Client Id */
            client_id: string;
            /**
             * Due At
             * Format: date-time
             */
            due_at: string;
        };
        /**
         * ErasureState
         * @description What goes with a record, in numbers, and what stays.
         */
        ErasureState: {
            asked: components["schemas"]["ErasureOut"] | null;
            /** Entries */
            entries: number;
            /**
             * Log Rows Kept
             * @description Rows of the log stay, with ids that then name nobody.
             */
            log_rows_kept: number;
            /** Messages */
            messages: number;
            /** Notes */
            notes: number;
            /** Phones */
            phones: number;
            /** Programs */
            programs: number;
            /** Screenings */
            screenings: number;
            /** Tests */
            tests: number;
            /** Undo Days */
            undo_days: number;
        };
        /**
         * EvidenceKind
         * @description What a piece of evidence is.
         * @enum {string}
         */
        EvidenceKind: "walk" | "pain" | "test";
        /**
         * EvidenceOut
         * @description A check-in that shows a finding.
         */
        EvidenceOut: {
            /**
             * Day
             * Format: date
             */
            day: string;
            /** Event Id */
            event_id: string;
            /** Sentence */
            sentence: string;
        };
        /**
         * Exercise
         * @description One movement with its ladder, easiest variant first.
         */
        Exercise: {
            /** Cautions */
            cautions: string[];
            /** Code */
            code: string;
            /**
             * Cues
             * @description What to think of while doing it.
             */
            cues: string[];
            /** Faults */
            faults: components["schemas"]["steadfoot__exercises__schemas__Fault"][];
            /**
             * Ladder
             * @description Variants, easiest first.
             */
            ladder: components["schemas"]["Variant"][];
            /**
             * Loads
             * @description Body regions that it loads by common practice, most loaded first.
             */
            loads: components["schemas"]["Region"][];
            /** Name */
            name: string;
            /** @description Of the practice's own; null for the library's. */
            own?: components["schemas"]["OwnMark"] | null;
            /** @description How the easiest variant is done; harder ones may be one-legged. */
            sides: components["schemas"]["Sides"];
            /**
             * Trains
             * @description What it trains, most first.
             */
            trains: components["schemas"]["Quality"][];
            /**
             * Why
             * @description One sentence for the client: what it is good for on the trail.
             */
            why: string;
        };
        /**
         * ExerciseList
         * @description The whole library.
         */
        ExerciseList: {
            /** Items */
            items: components["schemas"]["Exercise"][];
        };
        /**
         * ExerciseText
         * @description A movement as a practice writes it; it gets its code from the program.
         */
        "ExerciseText-Input": {
            /** Cautions */
            cautions: string[];
            /**
             * Cues
             * @description What to think of while doing it.
             */
            cues: string[];
            /** Faults */
            faults: components["schemas"]["Fault-Input"][];
            /**
             * Ladder
             * @description Variants, easiest first.
             */
            ladder: components["schemas"]["VariantText"][];
            /**
             * Loads
             * @description Body regions that it loads by common practice, most loaded first.
             */
            loads: components["schemas"]["Region"][];
            /** Name */
            name: string;
            /** @description How the easiest variant is done; harder ones may be one-legged. */
            sides: components["schemas"]["Sides"];
            /**
             * Trains
             * @description What it trains, most first.
             */
            trains: components["schemas"]["Quality"][];
            /**
             * Why
             * @description One sentence for the client: what it is good for on the trail.
             */
            why: string;
        };
        /**
         * ExerciseText
         * @description A movement as a practice writes it; it gets its code from the program.
         */
        "ExerciseText-Output": {
            /** Cautions */
            cautions: string[];
            /**
             * Cues
             * @description What to think of while doing it.
             */
            cues: string[];
            /** Faults */
            faults: components["schemas"]["steadfoot__exercises__schemas__Fault"][];
            /**
             * Ladder
             * @description Variants, easiest first.
             */
            ladder: components["schemas"]["VariantText"][];
            /**
             * Loads
             * @description Body regions that it loads by common practice, most loaded first.
             */
            loads: components["schemas"]["Region"][];
            /** Name */
            name: string;
            /** @description How the easiest variant is done; harder ones may be one-legged. */
            sides: components["schemas"]["Sides"];
            /**
             * Trains
             * @description What it trains, most first.
             */
            trains: components["schemas"]["Quality"][];
            /**
             * Why
             * @description One sentence for the client: what it is good for on the trail.
             */
            why: string;
        };
        /**
         * Fault
         * @description A way it goes wrong, and what to do instead.
         */
        "Fault-Input": {
            /** Instead */
            instead: string;
            /** See */
            see: string;
        };
        /**
         * Feeds
         * @description The input of the table that a question feeds.
         * @enum {string}
         */
        Feeds: "regular_activity" | "known_disease" | "signs_or_symptoms";
        /**
         * FindingOut
         * @description Something in a drawing that a body cannot do. A drawing with any is kept, and not used.
         */
        FindingOut: {
            /**
             * Detail
             * @description In plain words, with the amount and the time from 0 to 1.
             */
            detail: string;
            fault: components["schemas"]["steadfoot__exercises__own_schemas__Fault"];
        };
        /**
         * FixOut
         * @description What takes a problem away, and the words for its button.
         */
        FixOut: {
            /** Label */
            label: string;
            /** Mends */
            mends: components["schemas"]["MendOut"][];
        };
        /**
         * Flag
         * @description A rule's finding that a practitioner should see.
         */
        Flag: {
            /** Answers */
            answers: components["schemas"]["Answer"][];
            /** Client Id */
            client_id: string;
            /** Client Name */
            client_name: string;
            /** Decisions */
            decisions: components["schemas"]["DecisionOut"][];
            /** Evidence */
            evidence: components["schemas"]["EvidenceOut"][];
            /** Id */
            id: string;
            /** @description How much weight the rule bears: published, derived or house. */
            kind: components["schemas"]["Kind"];
            /** Rule */
            rule: string;
            /**
             * Since
             * Format: date
             */
            since: string;
            source: components["schemas"]["FlagSource"];
            /**
             * Status
             * @description open, acknowledged or closed.
             */
            status: string;
            suggestion: components["schemas"]["FlagSuggestion"] | null;
            /** Title */
            title: string;
        };
        /**
         * FlagList
         * @description Flags, the most urgent first.
         */
        FlagList: {
            /** Items */
            items: components["schemas"]["Flag"][];
        };
        /**
         * FlagShort
         * @description A flag in one line.
         */
        FlagShort: {
            /** Id */
            id: string;
            /** Rule */
            rule: string;
            /**
             * Since
             * Format: date
             */
            since: string;
            /** Title */
            title: string;
        };
        /**
         * FlagSource
         * @description The work that a rule follows.
         */
        FlagSource: {
            /** Authors */
            authors: string;
            /** Key */
            key: string;
            /** Title */
            title: string;
            /** Year */
            year: string;
        };
        /**
         * FlagStatus
         * @description Where a flag stands.
         * @enum {string}
         */
        FlagStatus: "open" | "acknowledged" | "closed";
        /**
         * FlagSuggestion
         * @description What the rule suggests, and what it would change for the client.
         */
        FlagSuggestion: {
            action: components["schemas"]["Action"];
            /** Effect */
            effect: string;
            /** Sentence */
            sentence: string;
        };
        /**
         * Foot
         * @description A foot with a place: the point of the floor below the ankle when flat.
         */
        Foot: {
            /**
             * Arch
             * @description Arch drawn up, by as much at its two ends; seen on bare feet.
             */
            arch?: number | null;
            /** At */
            at?: [
                number,
                number,
                number
            ] | null;
            /**
             * Heading
             * @description Toes outward.
             */
            heading?: number | null;
            /**
             * Inversion
             * @description Sole inward is positive, outward negative.
             */
            inversion?: number | null;
            /**
             * Knee Out
             * @description Knee outward of the toes.
             */
            knee_out?: number | null;
            /**
             * Pitch
             * @description Heel up is positive and bends the toes; toes up is negative.
             */
            pitch?: number | null;
            /**
             * Pivot
             * @description Stands on an edge: the heel may sink.
             */
            pivot?: "ball" | null;
        };
        /**
         * Form
         * @description How a variant is drawn.
         * @enum {string}
         */
        Form: "moving" | "still" | "strip";
        /**
         * FromFile
         * @description What a GPX file said of a leg. It holds no place, no time and no name.
         */
        FromFile: {
            /** Counted */
            counted: components["schemas"]["CountedPart"][];
            /** Highest M */
            highest_m: number | null;
            /** Lowest M */
            lowest_m: number | null;
            /** Points */
            points: number;
            /** Points With Height */
            points_with_height: number;
            /** Remarks */
            remarks: string[];
            /** Segments */
            segments: number;
            /** Stretches */
            stretches: components["schemas"]["StretchPart"][];
        };
        /**
         * FromTemplateBody
         * @description Which template, and when. Without an end it runs to the day before the goal.
         */
        FromTemplateBody: {
            /** Ends On */
            ends_on?: string | null;
            goal?: components["schemas"]["Goal"] | null;
            /**
             * Starts On
             * Format: date
             */
            starts_on: string;
            /**
             * Template
             * @description Id of the template.
             */
            template: string;
        };
        /**
         * FunctionalScaleBody
         * @description A rating of what is hard; the same names in each rating, or they cannot be compared.
         */
        FunctionalScaleBody: {
            /** Activities */
            activities: components["schemas"]["steadfoot__assessment__schemas__Activity"][];
            /**
             * Taken On
             * @description The client's today if left out
             */
            taken_on?: string | null;
        };
        /**
         * FunctionalScaleOut
         * @description Ratings, newest first, and the change between the last two.
         */
        FunctionalScaleOut: {
            change: components["schemas"]["steadfoot__assessment__schemas__ChangeOut"] | null;
            /** Items */
            items: components["schemas"]["RatingOut"][];
            source_work: components["schemas"]["SourceWork"];
            /** Why Not Compared */
            why_not_compared: string | null;
        };
        /**
         * Goal
         * @description What the program leads up to.
         */
        Goal: {
            /**
             * Date
             * Format: date
             */
            date: string;
            /** Name */
            name: string;
        };
        /**
         * GoalAhead
         * @description A goal with the days left; negative once it has passed.
         */
        GoalAhead: {
            /**
             * Date
             * Format: date
             */
            date: string;
            /** Days To */
            days_to: number;
            /** Name */
            name: string;
        };
        /**
         * GoalOut
         * @description What the program leads up to.
         */
        GoalOut: {
            /**
             * Date
             * Format: date
             */
            date: string;
            /** Name */
            name: string;
        };
        /**
         * GradeOut
         * @description Kilometres at a grade from ``from_percent`` to below ``to_percent``; null is open to that side.
         */
        GradeOut: {
            /** Distance Km */
            distance_km: number;
            /** From Percent */
            from_percent: number | null;
            /** To Percent */
            to_percent: number | null;
        };
        /**
         * Ground
         * @description What the way is made of, as far as factors are published for it.
         * @enum {string}
         */
        Ground: "road" | "dirt_road" | "light_brush" | "heavy_brush" | "bog" | "sand" | "snow";
        /**
         * Group
         * @description The parts of the caseload, in the order shown.
         * @enum {string}
         */
        Group: "needs_you" | "silent" | "on_the_way" | "no_program";
        /**
         * Hand
         * @description A hand with a place: that of the wrist.
         */
        Hand: {
            /** At */
            at?: [
                number,
                number,
                number
            ] | null;
            /**
             * Elbow
             * @description Where the elbow points, in the thorax' frame.
             */
            elbow?: [
                number,
                number,
                number
            ] | null;
            /**
             * Fingers
             * @description Where they point; zeros: on from the forearm.
             */
            fingers?: [
                number,
                number,
                number
            ] | null;
            /** Grip */
            grip?: boolean | null;
            /** In */
            in?: ("world" | "pelvis" | "thorax" | "head" | "thigh") | null;
        };
        /**
         * HandleOut
         * @description A joint that can be dragged, on paper.
         */
        HandleOut: {
            /** Point */
            point: string;
            /** X */
            x: number;
            /** Y */
            y: number;
        };
        /**
         * Headline
         * @description How many clients there are, and how many of them need something.
         */
        Headline: {
            /** Need You */
            need_you: number;
            /** People */
            people: number;
            /** Silent */
            silent: number;
        };
        /**
         * History
         * @description What is known of a client's sessions from ``since`` on, by planned id.
         */
        History: {
            /** Items */
            items: components["schemas"]["HistoryItem"][];
            /**
             * Since
             * Format: date
             */
            since: string;
        };
        /**
         * HistoryItem
         * @description What the client's phones have said of one planned session.
         *
         *     A planned id ``extra.YYYY-MM-DD`` stands for what was done outside the plan on that day.
         */
        HistoryItem: {
            /**
             * Day
             * Format: date
             * @description Newest calendar day that an entry of it is about
             */
            day: string;
            /** Effort */
            effort: number | null;
            /** Finished */
            finished: boolean;
            /**
             * Left Out
             * @description Prescription key, round and reason
             */
            left_out: [
                string,
                number,
                string
            ][];
            /** Minutes */
            minutes: number | null;
            /** Planned Id */
            planned_id: string;
            /** Program Version */
            program_version: number | null;
            /**
             * Sets
             * @description Prescription key and round of each set done
             */
            sets: [
                string,
                number
            ][];
            /**
             * Swaps
             * @description Prescription key to the variant done instead, or exercise/variant of another movement
             */
            swaps: {
                [key: string]: string;
            };
            walk: components["schemas"]["WalkDone"] | null;
        };
        /**
         * HoldDose
         * @description Usual dose of a variant that is held.
         */
        HoldDose: {
            /**
             * Hold S
             * @description Shortest and longest hold in seconds, a side where done for each side.
             */
            hold_s: [
                number,
                number
            ];
        };
        /**
         * InstallationOut
         * @description How the installation stands. Without notices, all is well.
         */
        InstallationOut: {
            address: components["schemas"]["AddressOut"];
            /**
             * As Of
             * Format: date-time
             */
            as_of: string;
            backup: components["schemas"]["BackupOut"];
            database: components["schemas"]["DatabaseOut"];
            disk: components["schemas"]["DiskOut"];
            /** Notices */
            notices: components["schemas"]["NoticeOut"][];
            phones: components["schemas"]["PhonesOut"];
            /** Version */
            version: string;
            /** Waiting */
            waiting: components["schemas"]["WaitingOut"][];
        };
        /**
         * Intensity
         * @description How hard the training and the trip are going to be.
         * @enum {string}
         */
        Intensity: "light_to_moderate" | "vigorous";
        /**
         * InvitationBody
         * @description How the code will reach the client.
         */
        InvitationBody: {
            delivery: components["schemas"]["Delivery"];
        };
        /**
         * InvitationOut
         * @description A code that pairs one phone, once. It is shown now and never again.
         */
        InvitationOut: {
            /** Client Id */
            client_id: string;
            /** Code */
            code: string;
            delivery: components["schemas"]["Delivery"];
            /**
             * Expires At
             * Format: date-time
             */
            expires_at: string;
            /** Id */
            id: string;
            /** Qr Svg */
            qr_svg: string;
            /** Url */
            url: string;
        };
        /**
         * JoinBody
         * @description The code of a colleague's link, and the password that they choose.
         */
        JoinBody: {
            /** Code */
            code: string;
            /** Display Name */
            display_name: string;
            /** Password */
            password: string;
        };
        /**
         * JoinCodeBody
         * @description The code of a colleague's link.
         */
        JoinCodeBody: {
            /** Code */
            code: string;
        };
        /**
         * Key
         * @description A key pose at its time, 0 to 1.
         */
        Key: {
            /**
             * Aim
             * @default {}
             */
            aim: {
                [key: string]: number;
            };
            arm?: components["schemas"]["Arm"] | null;
            "arm.L"?: components["schemas"]["Arm"] | null;
            "arm.R"?: components["schemas"]["Arm"] | null;
            foot?: components["schemas"]["Foot"] | null;
            "foot.L"?: components["schemas"]["Foot"] | null;
            "foot.R"?: components["schemas"]["Foot"] | null;
            hand?: components["schemas"]["Hand"] | null;
            "hand.L"?: components["schemas"]["Hand"] | null;
            "hand.R"?: components["schemas"]["Hand"] | null;
            leg?: components["schemas"]["Leg"] | null;
            "leg.L"?: components["schemas"]["Leg"] | null;
            "leg.R"?: components["schemas"]["Leg"] | null;
            neck?: components["schemas"]["Bend"] | null;
            pelvis?: components["schemas"]["Pelvis"] | null;
            shoulders?: components["schemas"]["Shoulders"] | null;
            spine?: components["schemas"]["Bend"] | null;
            /** T */
            t: number;
        };
        /**
         * Kind
         * @description How much weight a number can bear.
         * @enum {string}
         */
        Kind: "published" | "derived" | "house";
        /**
         * Kit
         * @description What a movement needs to be done at home.
         * @enum {string}
         */
        Kit: "chair" | "step" | "stairs" | "wall" | "mat" | "band" | "dumbbell" | "pack" | "towel" | "ball" | "rail" | "table" | "pillow";
        /**
         * Language
         * @description Languages of the sheet's own words; a movement's texts are in the library's.
         * @enum {string}
         */
        Language: "en" | "de";
        /**
         * LayOutBody
         * @description A season to lay into a program.
         */
        LayOutBody: {
            /**
             * Circuits
             * @description Keys of the circuits that strength sessions take in turn.
             */
            circuits: string[];
            /** @description The program to go on from; null: a new one. */
            content?: components["schemas"]["ProgramContent-Input"] | null;
            /**
             * @default {
             *       "cardio": "Easy endurance",
             *       "cardio_activity": "Bike, swim or brisk walk, easy",
             *       "long_walk": "Long walk",
             *       "rest": "Rest and packing",
             *       "short_walk": "Shorter walk"
             *     }
             */
            names: components["schemas"]["SeasonNames"];
            season: components["schemas"]["SeasonPlan-Input"];
            /**
             * Template
             * @description Where the circuits are from; null: from the content.
             */
            template?: string | null;
            /** Trip Name */
            trip_name: string;
        };
        /**
         * Leg
         * @description A leg told by its angles; hip: flexion, abduction, external rotation.
         */
        Leg: {
            /**
             * Ankle
             * @description Toes toward the shin are positive.
             */
            ankle?: number | null;
            /** Hip */
            hip?: [
                number,
                number,
                number
            ] | null;
            /**
             * Inversion
             * @description Sole inward is positive, outward negative.
             */
            inversion?: number | null;
            /** Knee */
            knee?: number | null;
            /** Toe */
            toe?: number | null;
        };
        /**
         * LegBody
         * @description A leg: typed, or as a file said it. Metres are null where nobody knows them; the pack where the trip's holds.
         */
        LegBody: {
            /** Ascent M */
            ascent_m: number | null;
            /** Day */
            day: number;
            /** Descent M */
            descent_m: number | null;
            /** Distance Km */
            distance_km: number;
            from_file?: components["schemas"]["FromFile"] | null;
            /**
             * Name
             * @default
             */
            name: string;
            /** Pack Kg */
            pack_kg?: number | null;
        };
        /**
         * LegDemandOut
         * @description What a leg asks. Null where heights or the body mass are not known.
         */
        LegDemandOut: {
            /** Ascent M */
            ascent_m: number | null;
            /** Day */
            day: number;
            /** Descent M */
            descent_m: number | null;
            /** Descent Work Kj */
            descent_work_kj: number | null;
            /** Distance Km */
            distance_km: number;
            energy: components["schemas"]["EnergyOut"] | null;
            /** Hours */
            hours: number;
            /** Hours By Rule */
            hours_by_rule: number;
            /** Name */
            name: string;
            /** Number */
            number: number;
            /** Pack Kg */
            pack_kg: number;
            /** Steps */
            steps: number;
        };
        /**
         * LegOut
         * @description A leg as it is kept.
         */
        LegOut: {
            /** Ascent M */
            ascent_m: number | null;
            /** Day */
            day: number;
            /** Descent M */
            descent_m: number | null;
            /** Distance Km */
            distance_km: number;
            from_file: components["schemas"]["FromFile"] | null;
            /** Name */
            name: string;
            /** Pack Kg */
            pack_kg: number | null;
        };
        /**
         * LoadNeed
         * @description Whether a variant is done with a weight.
         * @enum {string}
         */
        LoadNeed: "none" | "optional" | "required";
        /**
         * LoadNumber
         * @description The numbers of ``Load`` by their codes, which stay the same in every language.
         * @enum {string}
         */
        LoadNumber: "weekly_load" | "monotony" | "strain" | "ewma_7" | "ewma_28";
        /**
         * LoadOut
         * @description Load through the last day heard. Numbers are null while fewer than seven days are known.
         */
        LoadOut: {
            /** Caution */
            caution: string;
            /** Days */
            days: components["schemas"]["DayLoad"][];
            /** Ewma 7 */
            ewma_7: number | null;
            /** Ewma 28 */
            ewma_28: number | null;
            /** Monotony */
            monotony: number | null;
            /** Strain */
            strain: number | null;
            /**
             * Through
             * @description Last day that the phone has told about; null: never heard.
             */
            through: string | null;
            /** Weekly */
            weekly: components["schemas"]["WeekLoad"][];
            /** Weekly Load */
            weekly_load: number | null;
            /** Words */
            words: components["schemas"]["LoadWords"][];
        };
        /**
         * LoadWords
         * @description What a number can and cannot tell, in English; ``code`` is what a page says it in another language by.
         */
        LoadWords: {
            /** About */
            about: string;
            /** Can Tell */
            can_tell: string;
            /** Cannot Tell */
            cannot_tell: string;
            code: components["schemas"]["LoadNumber"];
            /** Source */
            source: string;
        };
        /**
         * Mark
         * @description How what was shown stands to what is asked, best first.
         * @enum {string}
         */
        Mark: "shown" | "near" | "not_shown" | "unknown";
        /**
         * Me
         * @description Who is signed in, and where.
         */
        Me: {
            /** Must Set Up Second Factor */
            must_set_up_second_factor: boolean;
            practice: components["schemas"]["PracticeOut"];
            practitioner: components["schemas"]["PractitionerOut"];
        };
        /**
         * Measure
         * @description What is entered, and so what the page offers: a counter, a stop-watch or a field.
         * @enum {string}
         */
        Measure: "count" | "seconds" | "metres" | "score" | "cm";
        /**
         * MendOut
         * @description A value to put at a JSON pointer of the content.
         */
        MendOut: {
            /** Pointer */
            pointer: string;
            /** Value */
            value: unknown;
        };
        /**
         * MessageBody
         * @description Words for a client.
         */
        MessageBody: {
            /** Text */
            text: string;
        };
        /**
         * MessageList
         * @description Messages, oldest first.
         */
        MessageList: {
            /** Items */
            items: components["schemas"]["MessageOut"][];
        };
        /**
         * MessageOut
         * @description A message to a client; ``read_at`` is when the phone said that it was read.
         */
        MessageOut: {
            /** Flag Id */
            flag_id: string | null;
            /** From */
            from: string;
            /** Id */
            id: string;
            /** Read At */
            read_at: string | null;
            /**
             * Sent At
             * Format: date-time
             */
            sent_at: string;
            /** Text */
            text: string;
        };
        /**
         * Movement
         * @description One variant, complete.
         */
        Movement: {
            /**
             * Again
             * @description Starts over after the last key: going back would be another movement.
             * @default false
             */
            again: boolean;
            /**
             * Balance
             * @default always
             * @enum {string}
             */
            balance: "always" | "keys" | "moving";
            /**
             * Barefoot
             * @default false
             */
            barefoot: boolean;
            base: components["schemas"]["PosePart"];
            /**
             * Contacts
             * @description Parts that bear weight all the time; none in walking.
             */
            contacts: string[];
            /**
             * Cycle
             * @default false
             */
            cycle: boolean;
            /**
             * Frame
             * @description Named points that the picture of a view closes in on.
             * @default {}
             */
            frame: {
                [key: string]: string[];
            };
            /** Keys */
            keys: {
                [key: string]: components["schemas"]["Key"];
            };
            /**
             * Lift
             * @description Drawn last, over all else.
             * @default []
             */
            lift: ("arm.L" | "arm.R" | "leg.L" | "leg.R" | "trunk" | "beside" | "behind" | "band" | "pack" | "seat")[];
            /**
             * Mark
             * @description Named point that the first cue is about.
             */
            mark?: string | null;
            /** Poster */
            poster: string;
            /**
             * Props
             * @default {}
             */
            props: {
                [key: string]: components["schemas"]["Prop"];
            };
            /**
             * Seconds
             * @description One way, or one round of a cycle.
             */
            seconds: number;
            /**
             * Sink
             * @description Drawn first, behind all else.
             * @default []
             */
            sink: ("arm.L" | "arm.R" | "leg.L" | "leg.R" | "trunk" | "beside" | "behind" | "band" | "pack" | "seat")[];
            /**
             * Solve
             * @default {}
             */
            solve: {
                [key: string]: string;
            };
            /** Strip */
            strip: string[];
            /** Views */
            views: ("side" | "left" | "front" | "back" | "quarter" | "quarter-left")[];
            /** Working */
            working: string[];
        };
        /**
         * Named
         * @description Somebody to choose by.
         */
        Named: {
            /** Id */
            id: string;
            /** Name */
            name: string;
        };
        /**
         * NewPasskey
         * @description What a browser made, and what its owner calls it.
         */
        NewPasskey: {
            /** Attestation */
            attestation: string;
            /** Client Data */
            client_data: string;
            /** Id */
            id: string;
            /** Name */
            name: string;
        };
        /**
         * NoteOut
         * @description A client's note.
         */
        NoteOut: {
            /**
             * Day
             * Format: date
             */
            day: string;
            /** Event Id */
            event_id: string;
            /** Text */
            text: string;
        };
        /**
         * NoticeOut
         * @description Something to do.
         */
        NoticeOut: {
            /**
             * Code
             * @enum {string}
             */
            code: "backup_none" | "backup_failed" | "backup_old" | "disk_low" | "kept_aside" | "work_waits" | "address_here" | "address_insecure" | "certificate_unreachable" | "certificate_untrusted" | "certificate_ends" | "database_unverified";
            /** Urgent */
            urgent: boolean;
        };
        /**
         * NumberOut
         * @description A number that changes advice. ``value`` is null for a whole table.
         */
        NumberOut: {
            kind: components["schemas"]["Kind"];
            /** Name */
            name: string;
            /** Note */
            note: string;
            /** Source */
            source: string;
            /** Unit */
            unit: string;
            /** Value */
            value: number | null;
            /**
             * Where
             * @description File of the rules that has it.
             */
            where: string;
        };
        /**
         * OpenSession
         * @description Where one is signed in: browser and system as codes, ``unknown`` where it did not say.
         */
        OpenSession: {
            /** Browser */
            browser: string;
            /** Here */
            here: boolean;
            /** Id */
            id: string;
            /**
             * Last Seen At
             * Format: date-time
             */
            last_seen_at: string;
            /**
             * Signed In At
             * Format: date-time
             */
            signed_in_at: string;
            /** System */
            system: string;
        };
        /**
         * OpenSessions
         * @description Every place, the one used last first.
         */
        OpenSessions: {
            /** Items */
            items: components["schemas"]["OpenSession"][];
        };
        /**
         * Outcome
         * @description What became of it.
         * @enum {string}
         */
        Outcome: "done" | "not_signed_in" | "not_allowed" | "not_found" | "too_many" | "failed";
        /**
         * Overview
         * @description One client whole.
         */
        Overview: {
            adherence_7: components["schemas"]["SpanAdherence"];
            adherence_28: components["schemas"]["SpanAdherence"];
            client: components["schemas"]["OverviewClient"];
            /** Current Number */
            current_number: number | null;
            /** Days */
            days: components["schemas"]["SessionOut"][];
            /** Flags */
            flags: components["schemas"]["Flag"][];
            goal: components["schemas"]["GoalAhead"] | null;
            /** Heard Until */
            heard_until: string | null;
            /** Messages */
            messages: components["schemas"]["MessageOut"][];
            /** Notes */
            notes: components["schemas"]["NoteOut"][];
            /** Pain */
            pain: components["schemas"]["PainOut"][];
            /** Pain Notes */
            pain_notes: components["schemas"]["PainNote"][];
            /** Pain Regions */
            pain_regions: components["schemas"]["PainRegion"][];
            /**
             * Phone Number
             * @description The highest version that the phone's entries have named.
             */
            phone_number: number | null;
            /** Possible Doubles */
            possible_doubles: components["schemas"]["PossibleDouble"][];
            program: components["schemas"]["ProgramShort"] | null;
            /** Refused Count */
            refused_count: number;
            ridge: components["schemas"]["Ridge"];
            suggestions: components["schemas"]["SuggestionsShort"];
        };
        /**
         * OverviewClient
         * @description A client in short.
         */
        OverviewClient: {
            /** Age */
            age: number | null;
            /** Archived At */
            archived_at: string | null;
            /** Birth Year */
            birth_year: number | null;
            /** Display Name */
            display_name: string;
            /** Id */
            id: string;
            /** Kit */
            kit: string[];
            /** Note */
            note: string;
            /** Thresholds */
            thresholds: {
                [key: string]: unknown;
            };
            /** Time Zone */
            time_zone: string;
            /** Usual Pain */
            usual_pain: number;
            /** Version */
            version: number;
        };
        /**
         * OwnBody
         * @description A movement of the practice's own.
         */
        OwnBody: {
            /**
             * Poses
             * @description Drawing of each drawn variant.
             * @default {}
             */
            poses: {
                [key: string]: components["schemas"]["Movement"];
            };
            text: components["schemas"]["ExerciseText-Input"];
        };
        /**
         * OwnMark
         * @description Marks a movement of the practice's own.
         */
        OwnMark: {
            /**
             * Archived
             * @description It is offered nowhere; programs that have it keep it.
             */
            archived: boolean;
            /**
             * Drawing
             * @description Takes the place of the code in the address of a drawing.
             */
            drawing: string;
            /**
             * Version
             * @description Number of the version, 1 for the first.
             */
            version: number;
        };
        /**
         * OwnOut
         * @description A movement of the practice's own, to go on with.
         */
        OwnOut: {
            /** Archived */
            archived: boolean;
            /** Code */
            code: string;
            /**
             * Findings
             * @description By variant; a variant with findings is not drawn.
             */
            findings: {
                [key: string]: components["schemas"]["FindingOut"][];
            };
            /** Poses */
            poses: {
                [key: string]: components["schemas"]["Movement"];
            };
            /**
             * Saved At
             * Format: date-time
             */
            saved_at: string;
            text: components["schemas"]["ExerciseText-Output"];
            /** Version */
            version: number;
        };
        /**
         * OwnPatch
         * @description Whether it is offered.
         */
        OwnPatch: {
            /** Archived */
            archived: boolean;
        };
        /**
         * PainNote
         * @description Pain of one place that became less in a way that matters, with the two reports that show it.
         */
        PainNote: {
            /** Evidence */
            evidence: components["schemas"]["EvidenceOut"][];
            kind: components["schemas"]["Kind"];
            /** Region */
            region: string;
            /** Sentence */
            sentence: string;
            /** Side */
            side: string;
            /** Source */
            source: string;
        };
        /**
         * PainOut
         * @description One pain report.
         */
        PainOut: {
            /** Aspect */
            aspect: string | null;
            /**
             * At
             * Format: date-time
             */
            at: string;
            /**
             * Day
             * Format: date
             */
            day: string;
            /** Event Id */
            event_id: string;
            /** Planned Id */
            planned_id: string | null;
            /** Rating */
            rating: number;
            /** Region */
            region: string;
            /** Side */
            side: string;
            /** When */
            when: string;
        };
        /**
         * PainRegion
         * @description One place that hurt: the worst of each of the 8 weeks, oldest first, and the days since it hurt more than
         *     usual.
         */
        PainRegion: {
            /** Quiet Days */
            quiet_days: number | null;
            /** Region */
            region: string;
            /** Side */
            side: string;
            /** Worst By Week */
            worst_by_week: (number | null)[];
        };
        /**
         * PairingBody
         * @description A code, as typed, pasted or scanned.
         */
        PairingBody: {
            /** Code */
            code: string;
            /**
             * Label
             * @default
             */
            label: string;
        };
        /**
         * PairingOut
         * @description The phone's key. The token is shown once.
         */
        PairingOut: {
            /** Check Number */
            check_number: string;
            /** Client Id */
            client_id: string;
            /** Client Name */
            client_name: string;
            /** Device Id */
            device_id: string;
            /** Pairing Id */
            pairing_id: string;
            /** Practice Name */
            practice_name: string;
            /** Practitioner Name */
            practitioner_name: string;
            /**
             * Status
             * @enum {string}
             */
            status: "active" | "awaiting_confirmation";
            /** Token */
            token: string;
        };
        /**
         * Paper
         * @description Sizes that a printer takes: ISO 216 A4, and US Letter.
         * @enum {string}
         */
        Paper: "a4" | "letter";
        /**
         * PasskeyAnswer
         * @description What a browser's passkey answered to a challenge.
         */
        PasskeyAnswer: {
            /** Authenticator Data */
            authenticator_data: string;
            /** Client Data */
            client_data: string;
            /** Id */
            id: string;
            /** Signature */
            signature: string;
        };
        /**
         * PasskeyOptions
         * @description What the browser's call of Web Authentication is given, bytes in URL-safe base 64.
         */
        PasskeyOptions: {
            /** Public Key */
            public_key: {
                [key: string]: unknown;
            };
        };
        /**
         * PasskeyOut
         * @description A passkey of one's own.
         */
        PasskeyOut: {
            /**
             * Created At
             * Format: date-time
             */
            created_at: string;
            /** Id */
            id: string;
            /** Last Used At */
            last_used_at: string | null;
            /** Name */
            name: string;
        };
        /**
         * PasskeySignInBody
         * @description Who signs in without a password.
         */
        PasskeySignInBody: {
            passkey: components["schemas"]["PasskeyAnswer"];
        };
        /**
         * PasswordBody
         * @description The password there is, and the one there shall be.
         */
        PasswordBody: {
            /** Current */
            current: string;
            /** New */
            new: string;
        };
        /**
         * Pause
         * @description Why training paused.
         * @enum {string}
         */
        Pause: "illness" | "holiday" | "missed_fortnight" | "pain";
        /**
         * PausedFor
         * @description Why and when training paused: the first day missed, and the day on which it is taken up again.
         */
        PausedFor: {
            reason: components["schemas"]["Pause"];
            /**
             * Resume On
             * Format: date
             */
            resume_on: string;
            /**
             * Since
             * Format: date
             */
            since: string;
        };
        /**
         * Pelvis
         * @description Place of the middle between the hip joints, and its turn: left, forward, to the right are positive.
         */
        Pelvis: {
            /** Lean */
            lean?: number | null;
            /** Tilt */
            tilt?: number | null;
            /** Turn */
            turn?: number | null;
            /** X */
            x?: number | null;
            /** Y */
            y?: number | null;
            /** Z */
            z?: number | null;
        };
        /**
         * People
         * @description The people of the practice, longest there first, and what it asks of them.
         */
        People: {
            /** Items */
            items: components["schemas"]["Colleague"][];
            /** Requires Second Factor */
            requires_second_factor: boolean;
            /** Waiting */
            waiting: components["schemas"]["WaitingColleague"][];
        };
        /**
         * PersonOut
         * @description A practitioner.
         */
        PersonOut: {
            /** Display Name */
            display_name: string;
            /** Id */
            id: string;
        };
        /**
         * Phase
         * @description What a week is for.
         * @enum {string}
         */
        Phase: "build" | "lighter" | "taper";
        /**
         * PhonesOut
         * @description Clients with a phone, and how many of them were not heard for ``silent_days`` days.
         */
        PhonesOut: {
            /** Clients */
            clients: number;
            /** Silent */
            silent: number;
            /** Silent Days */
            silent_days: number;
        };
        /**
         * PickBody
         * @description One way of doing a movement; its dose is the library's usual one.
         */
        PickBody: {
            /** Exercise */
            exercise: string;
            /** Variant */
            variant: string;
        };
        /**
         * PinnedSession
         * @description A session that stays on its day whatever is planned around it.
         */
        "PinnedSession-Input": {
            activity: components["schemas"]["steadfoot__rules__season_request__Activity"];
            /**
             * Date
             * Format: date
             */
            date: string;
            /**
             * Locked
             * @description The client, too, does it on this day only.
             * @default false
             */
            locked: boolean;
        };
        /**
         * PinnedSession
         * @description A session that stays on its day whatever is planned around it.
         */
        "PinnedSession-Output": {
            activity: components["schemas"]["steadfoot__rules__season_request__Activity"];
            /**
             * Date
             * Format: date
             */
            date: string;
            /**
             * Locked
             * @description The client, too, does it on this day only.
             * @default false
             */
            locked: boolean;
        };
        /**
         * PlannedDay
         * @description One planned session: a date and the session for it.
         */
        "PlannedDay-Input": {
            /**
             * Date
             * Format: date
             */
            date: string;
            /**
             * Fixed Day
             * @description On this day only; otherwise until the end of its week.
             * @default false
             */
            fixed_day: boolean;
            /**
             * Session
             * @description Key of the session.
             */
            session: string;
        };
        /**
         * PlannedDay
         * @description One planned session: a date and the session for it.
         */
        "PlannedDay-Output": {
            /**
             * Date
             * Format: date
             */
            date: string;
            /**
             * Fixed Day
             * @description On this day only; otherwise until the end of its week.
             * @default false
             */
            fixed_day: boolean;
            /**
             * Session
             * @description Key of the session.
             */
            session: string;
        };
        /**
         * PosePart
         * @description A pose, or what changes in it. A limb without a side means both, mirrored.
         */
        PosePart: {
            /**
             * Aim
             * @default {}
             */
            aim: {
                [key: string]: number;
            };
            arm?: components["schemas"]["Arm"] | null;
            "arm.L"?: components["schemas"]["Arm"] | null;
            "arm.R"?: components["schemas"]["Arm"] | null;
            foot?: components["schemas"]["Foot"] | null;
            "foot.L"?: components["schemas"]["Foot"] | null;
            "foot.R"?: components["schemas"]["Foot"] | null;
            hand?: components["schemas"]["Hand"] | null;
            "hand.L"?: components["schemas"]["Hand"] | null;
            "hand.R"?: components["schemas"]["Hand"] | null;
            leg?: components["schemas"]["Leg"] | null;
            "leg.L"?: components["schemas"]["Leg"] | null;
            "leg.R"?: components["schemas"]["Leg"] | null;
            neck?: components["schemas"]["Bend"] | null;
            pelvis?: components["schemas"]["Pelvis"] | null;
            shoulders?: components["schemas"]["Shoulders"] | null;
            spine?: components["schemas"]["Bend"] | null;
        };
        /**
         * PossibleDouble
         * @description A session outside the plan on a day on which a planned one was done too: perhaps the same.
         */
        PossibleDouble: {
            /**
             * Day
             * Format: date
             */
            day: string;
            /** Name */
            name: string;
            /** Planned Id */
            planned_id: string;
        };
        /**
         * PracticeOut
         * @description The practice of the person who is signed in.
         */
        PracticeOut: {
            /** Emergency Text */
            emergency_text: string;
            /** Id */
            id: string;
            /** Name */
            name: string;
            /** Reply Time Text */
            reply_time_text: string;
            /** Time Zone */
            time_zone: string;
        };
        /**
         * PracticeSecurity
         * @description What the practice asks of its people.
         */
        PracticeSecurity: {
            /** Requires Second Factor */
            requires_second_factor: boolean;
        };
        /**
         * PracticeWords
         * @description What a practice says to its clients in its own words. Phones show both where help is sought: neither is empty.
         */
        PracticeWords: {
            /**
             * Emergency Text
             * @description Above pain and symptoms: whom to call in an emergency
             */
            emergency_text: string;
            /**
             * Reply Time Text
             * @description Where clients write: when the practice reads and answers
             */
            reply_time_text: string;
        };
        /**
         * PractitionerOut
         * @description The person who is signed in.
         */
        PractitionerOut: {
            /** Display Name */
            display_name: string;
            /** Email */
            email: string;
            /** Id */
            id: string;
            role: components["schemas"]["Role"];
        };
        /**
         * Prescription
         * @description One exercise variant with its dose: repetitions or a hold, never both.
         */
        "Prescription-Input": {
            /**
             * Alternatives
             * @description What the client may do instead.
             * @default []
             */
            alternatives: components["schemas"]["Alternative-Input"][];
            /** Exercise */
            exercise: string;
            /**
             * Hold S
             * @description Hold in seconds, 1 to 300.
             */
            hold_s?: number | null;
            /**
             * Key
             * @description Unique in the program; kept when the program is edited.
             */
            key: string;
            /**
             * Load Kg
             * @description Weight in kg, 0 to 200.
             */
            load_kg?: number | null;
            /**
             * Note
             * @default
             */
            note: string;
            /**
             * Reps High
             * @description Most repetitions in a set, 1 to 50.
             */
            reps_high?: number | null;
            /**
             * Reps Low
             * @description Fewest repetitions in a set, 1 to 50.
             */
            reps_low?: number | null;
            /**
             * Rest S
             * @description Rest after the set in seconds, 0 to 600.
             * @default 0
             */
            rest_s: number;
            /** @description Each side in turn, or both together. */
            sides: components["schemas"]["Sides"];
            /**
             * Tempo Down S
             * @description Seconds on the way down, 1 to 10.
             */
            tempo_down_s?: number | null;
            /** Variant */
            variant: string;
        };
        /**
         * Prescription
         * @description One exercise variant with its dose: repetitions or a hold, never both.
         */
        "Prescription-Output": {
            /**
             * Alternatives
             * @description What the client may do instead.
             * @default []
             */
            alternatives: components["schemas"]["Alternative-Output"][];
            /** Exercise */
            exercise: string;
            /**
             * Hold S
             * @description Hold in seconds, 1 to 300.
             */
            hold_s: number | null;
            /**
             * Key
             * @description Unique in the program; kept when the program is edited.
             */
            key: string;
            /**
             * Load Kg
             * @description Weight in kg, 0 to 200.
             */
            load_kg: number | null;
            /**
             * Note
             * @default
             */
            note: string;
            /**
             * Reps High
             * @description Most repetitions in a set, 1 to 50.
             */
            reps_high: number | null;
            /**
             * Reps Low
             * @description Fewest repetitions in a set, 1 to 50.
             */
            reps_low: number | null;
            /**
             * Rest S
             * @description Rest after the set in seconds, 0 to 600.
             * @default 0
             */
            rest_s: number;
            /** @description Each side in turn, or both together. */
            sides: components["schemas"]["Sides"];
            /**
             * Tempo Down S
             * @description Seconds on the way down, 1 to 10.
             */
            tempo_down_s: number | null;
            /** Variant */
            variant: string;
        };
        /**
         * PreviewBody
         * @description A movement, the key that is looked at, and what is to be changed in it.
         */
        PreviewBody: {
            drag?: components["schemas"]["Drag"] | null;
            /** Key */
            key: string;
            /**
             * Mirror
             * @description Do the same on the other side.
             * @default false
             */
            mirror: boolean;
            movement: components["schemas"]["Movement"];
            /**
             * Set
             * @description New numbers by path.
             * @default {}
             */
            set: {
                [key: string]: number;
            };
            /**
             * View
             * @enum {string}
             */
            view: "side" | "left" | "front" | "back" | "quarter" | "quarter-left";
            /**
             * Whole
             * @description Draw and check the whole movement instead of the one key.
             * @default false
             */
            whole: boolean;
        };
        /**
         * PreviewOut
         * @description What came of it.
         */
        PreviewOut: {
            /** Controls */
            controls: components["schemas"]["ControlOut"][];
            /**
             * Findings
             * @description Of the keys alone, or of the whole movement where asked.
             */
            findings: components["schemas"]["FindingOut"][];
            /**
             * Frame
             * @description Left, top, width, height in drawing units.
             */
            frame: [
                number,
                number,
                number,
                number
            ];
            /** Handles */
            handles: components["schemas"]["HandleOut"][];
            /** @description With the change; every key says all of its numbers. */
            movement: components["schemas"]["Movement"];
            /** Svg */
            svg: string;
        };
        /**
         * Problem
         * @description An error (RFC 9457): code is for programs, detail for people; errors names each field.
         */
        Problem: {
            code: string;
            detail: string;
            errors?: {
                code?: string;
                detail?: string;
                pointer?: string;
            }[];
            instance?: string;
            status: number;
            title: string;
            type: string;
        };
        /**
         * ProblemOut
         * @description Something in a program that does not fit.
         */
        ProblemOut: {
            /** Code */
            code: string;
            fix: components["schemas"]["FixOut"] | null;
            /** Message */
            message: string;
            /**
             * Pointer
             * @description JSON pointer into the content as it was sent.
             */
            pointer: string;
            severity: components["schemas"]["Severity"];
        };
        /**
         * ProgramContent
         * @description Everything that a program version says.
         */
        "ProgramContent-Input": {
            /** Days */
            days: components["schemas"]["PlannedDay-Input"][];
            /**
             * Ends On
             * @description Last day; null with a goal: the day before the goal.
             */
            ends_on?: string | null;
            goal?: components["schemas"]["Goal"] | null;
            /** @description What its season was planned from; absent where it was written by hand. */
            season?: components["schemas"]["SeasonPlan-Input"] | null;
            /** Sessions */
            sessions: (components["schemas"]["Circuit-Input"] | components["schemas"]["Walk-Input"] | components["schemas"]["Cardio-Input"] | components["schemas"]["Rest-Input"])[];
            /**
             * Starts On
             * Format: date
             * @description First day, YYYY-MM-DD.
             */
            starts_on: string;
            /** Title */
            title: string;
        };
        /**
         * ProgramContent
         * @description Everything that a program version says.
         */
        "ProgramContent-Output": {
            /** Days */
            days: components["schemas"]["PlannedDay-Output"][];
            /**
             * Ends On
             * @description Last day; null with a goal: the day before the goal.
             */
            ends_on: string | null;
            goal: components["schemas"]["Goal"] | null;
            /** @description What its season was planned from; absent where it was written by hand. */
            season?: components["schemas"]["SeasonPlan-Output"] | null;
            /** Sessions */
            sessions: (components["schemas"]["Circuit-Output"] | components["schemas"]["Walk-Output"] | components["schemas"]["Cardio-Output"] | components["schemas"]["Rest-Output"])[];
            /**
             * Starts On
             * Format: date
             * @description First day, YYYY-MM-DD.
             */
            starts_on: string;
            /** Title */
            title: string;
        };
        /**
         * ProgramList
         * @description All published versions of a client, newest first.
         */
        ProgramList: {
            /** Items */
            items: components["schemas"]["ProgramSummary"][];
        };
        /**
         * ProgramOut
         * @description A published version.
         */
        ProgramOut: {
            /** Changes */
            changes: string[];
            content: components["schemas"]["ProgramContent-Output"];
            /**
             * Effective On
             * Format: date
             * @description The client's own calendar day of publishing.
             */
            effective_on: string;
            /** Id */
            id: string;
            /** Note */
            note: string;
            /** Number */
            number: number;
            /**
             * Published At
             * Format: date-time
             */
            published_at: string;
            published_by: components["schemas"]["PersonOut"];
            /** Title */
            title: string;
        };
        /**
         * ProgramShort
         * @description The program in force.
         */
        ProgramShort: {
            /** Number */
            number: number;
            /**
             * Published At
             * Format: date-time
             */
            published_at: string;
            /** Title */
            title: string;
        };
        /**
         * ProgramSummary
         * @description A published version without its content.
         */
        ProgramSummary: {
            /** Changes */
            changes: string[];
            /**
             * Effective On
             * Format: date
             * @description The client's own calendar day of publishing.
             */
            effective_on: string;
            /** Id */
            id: string;
            /** Note */
            note: string;
            /** Number */
            number: number;
            /**
             * Published At
             * Format: date-time
             */
            published_at: string;
            published_by: components["schemas"]["PersonOut"];
            /** Title */
            title: string;
        };
        /**
         * Progressed
         * @description The version that was published, null where all was declined, and what it changes.
         */
        Progressed: {
            /** Changes */
            changes: string[];
            /** Program Number */
            program_number: number | null;
        };
        /**
         * ProgressionRule
         * @description The rules on progress, in the order in which they are asked.
         * @enum {string}
         */
        ProgressionRule: "pain_high" | "flag_open" | "not_enough" | "spacing_48h" | "short_of_goal" | "deload_due" | "adherence_low" | "effort_above_target" | "pain_acceptable" | "two_for_two" | "not_yet_two_for_two";
        /**
         * ProgressionsBody
         * @description Decisions made at once: all that is accepted becomes one new version.
         */
        ProgressionsBody: {
            /** Decisions */
            decisions: components["schemas"]["Choice"][];
            /**
             * Note
             * @default
             */
            note: string;
            /** Program Number */
            program_number: number;
        };
        /**
         * Prop
         * @description A thing in the picture; which fields it needs depends on its kind.
         */
        Prop: {
            /**
             * Anchor
             * @description A fixed end instead of the second point.
             */
            anchor?: [
                number,
                number,
                number
            ] | null;
            /**
             * At
             * @description Middle of its foot print; of a carried pack, from between the palms.
             */
            at?: [
                number,
                number,
                number
            ] | null;
            /**
             * Behind
             * @description Drawn behind the person in a front view.
             * @default false
             */
            behind: boolean;
            /**
             * Ends
             * @description Named points that a band or towel joins.
             */
            ends?: [
                string,
                string
            ] | null;
            /**
             * Faces
             * @description Direction its front looks, turned from x toward y.
             * @default 0
             */
            faces: number;
            /**
             * Hands
             * @default []
             */
            hands: ("L" | "R")[];
            /**
             * Kind
             * @enum {string}
             */
            kind: "box" | "wall" | "mat" | "chair" | "table" | "rail" | "pillow" | "dumbbell" | "band" | "pack" | "towel" | "star" | "ball";
            /**
             * Mass
             * @description As a fraction of body mass.
             */
            mass?: number | null;
            /**
             * Size
             * @description Depth along x, width along y, height.
             */
            size?: [
                number,
                number,
                number
            ] | null;
            /**
             * Slope
             * @description Rise of a rail toward its front, for its run.
             * @default 0
             */
            slope: number;
            /**
             * Under
             * @description Heels that a towel lies under and slides along with.
             * @default []
             */
            under: ("L" | "R")[];
        };
        /**
         * PublishBody
         * @description A program to publish.
         */
        PublishBody: {
            content: components["schemas"]["ProgramContent-Input"];
            /**
             * Note
             * @description Why, for the record; the client does not see it.
             * @default
             */
            note: string;
        };
        /**
         * Quality
         * @description What a movement trains.
         * @enum {string}
         */
        Quality: "hip_control" | "knee_control" | "single_leg_strength" | "calf_strength" | "descent_control" | "trunk_control" | "shoulder_control" | "balance" | "power" | "carrying" | "mobility";
        /**
         * QuestionList
         * @description The questions in the order in which they are asked, and the work that the groups follow.
         */
        QuestionList: {
            /** Items */
            items: components["schemas"]["QuestionOut"][];
            source: components["schemas"]["SourceWork"];
        };
        /**
         * QuestionOut
         * @description A question, answered yes or no. Yes to any question of a group makes the group true.
         */
        QuestionOut: {
            /** Code */
            code: string;
            /** Help */
            help: string;
            maps_to: components["schemas"]["Feeds"];
            /** Question */
            question: string;
        };
        /**
         * RangeOut
         * @description The lowest and the highest result that are possible.
         */
        RangeOut: {
            /** High */
            high: number;
            /** Low */
            low: number;
        };
        /**
         * RatingOut
         * @description One rating of what is hard; the mean is 0 to 10, higher is better.
         */
        RatingOut: {
            /** Activities */
            activities: components["schemas"]["steadfoot__assessment__schemas__Activity"][];
            /** Id */
            id: string;
            /** Mean */
            mean: number;
            /**
             * Recorded At
             * Format: date-time
             */
            recorded_at: string;
            /**
             * Taken By
             * @description Name of the practitioner
             */
            taken_by: string;
            /**
             * Taken On
             * Format: date
             */
            taken_on: string;
        };
        /**
         * RatioOut
         * @description Done over prescribed among what was due, 0 to 1: a range while some of it is not heard.
         */
        RatioOut: {
            /** Done */
            done: number;
            /** High */
            high: number | null;
            /**
             * Low
             * @description Null where nothing was prescribed.
             */
            low: number | null;
            /** Prescribed */
            prescribed: number;
        };
        /**
         * ReadinessDay
         * @description One day of the trip; null where the trip does not say it.
         */
        ReadinessDay: {
            /** Ascent M */
            ascent_m: number | null;
            /** Descent M */
            descent_m: number | null;
            /**
             * Distance Km
             * @description 0 on a day of rest.
             */
            distance_km: number;
            /** Name */
            name: string;
            /** Pack Kg */
            pack_kg: number | null;
        };
        /**
         * ReadinessEvidence
         * @description A check-in or a test result, with the value that it shows.
         */
        ReadinessEvidence: {
            /**
             * Day
             * Format: date
             */
            day: string;
            /** Id */
            id: string;
            kind: components["schemas"]["EvidenceKind"];
            side: components["schemas"]["TestSide"] | null;
            /** Value */
            value: number;
        };
        /**
         * ReadinessItem
         * @description What is asked beside what was shown, in ``unit``; ``low`` to ``high`` is what the value shown may really be.
         */
        ReadinessItem: {
            /** Asked */
            asked: number | null;
            /**
             * At Most
             * @description Less is better.
             */
            at_most: boolean;
            closing: components["schemas"]["Closing"];
            /** Doubts */
            doubts: components["schemas"]["Doubt"][];
            /** Evidence */
            evidence: components["schemas"]["ReadinessEvidence"][];
            /** High */
            high: number | null;
            /**
             * In Time
             * @description Whether the weeks before the taper suffice; null if one is not known.
             */
            in_time: boolean | null;
            kind: components["schemas"]["Kind"];
            /** Low */
            low: number | null;
            mark: components["schemas"]["Mark"];
            /**
             * Note
             * @description What draws the line between the marks.
             */
            note: string;
            /** Parts */
            parts: components["schemas"]["ReadinessPart"][];
            /** Shown */
            shown: number | null;
            /** Source */
            source: string;
            subject: components["schemas"]["Subject"];
            /** Unit */
            unit: string;
            /**
             * Weeks
             * @description What closing the gap takes; null where no number can be given.
             */
            weeks: number | null;
        };
        /**
         * ReadinessNoteBody
         * @description A note to sign: go as planned, go with changes, or not yet, with the reasons in words.
         */
        ReadinessNoteBody: {
            /**
             * Digest
             * @description The digest of what was shown to the person who signs.
             */
            digest: string;
            verdict: components["schemas"]["Verdict"];
            /** Words */
            words: string;
        };
        /**
         * ReadinessOut
         * @description Readiness as it stands, and the notes, newest first.
         */
        ReadinessOut: {
            /**
             * Digest
             * @description Names what is shown; a note is signed for exactly this.
             */
            digest: string;
            /** Notes */
            notes: components["schemas"]["SignedNote"][];
            shown: components["schemas"]["ReadinessShown"];
        };
        /**
         * ReadinessPart
         * @description One thing of several that one day asks for at once.
         */
        ReadinessPart: {
            /** Asked */
            asked: number;
            /** Shown */
            shown: number;
            subject: components["schemas"]["Subject"];
        };
        /**
         * ReadinessShown
         * @description Everything that a note rests on.
         */
        ReadinessShown: {
            /**
             * As Of
             * Format: date
             */
            as_of: string;
            /** Cautions */
            cautions: components["schemas"]["Caution"][];
            /** Heard On */
            heard_on: string | null;
            /** Items */
            items: components["schemas"]["ReadinessItem"][];
            /** @description Null while no day of the trip is known. */
            trip: components["schemas"]["ReadinessTrip"] | null;
            /**
             * Weeks Left
             * @description Null without a date.
             */
            weeks_left: number | null;
            /**
             * Weeks To Build
             * @description Those of the weeks left that are not the taper.
             */
            weeks_to_build: number | null;
        };
        /**
         * ReadinessTrip
         * @description What is asked.
         */
        ReadinessTrip: {
            /** Days */
            days: components["schemas"]["ReadinessDay"][];
            /** Name */
            name: string | null;
            /** Starts On */
            starts_on: string | null;
        };
        /**
         * ReadingOut
         * @description Legs that a file says; nothing is saved. ``ascent_threshold_m`` is the rule by which ascent is counted.
         */
        ReadingOut: {
            /** Ascent Threshold M */
            ascent_threshold_m: number;
            /** Legs */
            legs: components["schemas"]["LegOut"][];
            /**
             * Remarks
             * @description What is odd, missing or approximate; whole sentences in English
             */
            remarks: string[];
        };
        /**
         * ReasonEvidence
         * @description One reason in words, with the check-in that shows it and its day where there is one.
         */
        ReasonEvidence: {
            /** Day */
            day: string | null;
            /** Event Id */
            event_id: string | null;
            /** Text */
            text: string;
        };
        /**
         * RecoveryCodes
         * @description Codes for paper, shown once. Empty: those there are stay good.
         */
        RecoveryCodes: {
            /** Recovery Codes */
            recovery_codes: string[];
        };
        /**
         * ReferenceOut
         * @description The norm that a result is read beside, in the test's unit.
         */
        ReferenceOut: {
            /** Grade */
            grade: string | null;
            /** Group */
            group: string;
            /** High */
            high: number | null;
            kind: components["schemas"]["Kind"];
            /** Low */
            low: number | null;
            /** Middle */
            middle: number | null;
            /** Note */
            note: string;
            shape: components["schemas"]["Shape"];
            source_work: components["schemas"]["SourceWork"];
        };
        /**
         * Refused
         * @description An item that was kept aside; it is held, and a person will look at it.
         */
        Refused: {
            /** Id */
            id: string;
            /** Problem */
            problem: {
                [key: string]: unknown;
            };
            /** Seq */
            seq: number | null;
        };
        /**
         * RefusedEventList
         * @description Items kept aside, oldest first.
         */
        RefusedEventList: {
            /** Items */
            items: components["schemas"]["RefusedEventOut"][];
        };
        /**
         * RefusedEventOut
         * @description An item kept aside, whole.
         */
        RefusedEventOut: {
            /** Device Id */
            device_id: string;
            /** Event Id */
            event_id: string;
            /** Problem */
            problem: {
                [key: string]: unknown;
            };
            /** Raw */
            raw: string;
            /**
             * Received At
             * Format: date-time
             */
            received_at: string;
            /** Seq */
            seq: number | null;
        };
        /**
         * Region
         * @description A place on the body, as a client can name it.
         * @enum {string}
         */
        Region: "head" | "neck" | "shoulder" | "upper_arm" | "elbow" | "forearm" | "hand" | "chest" | "abdomen" | "upper_back" | "lower_back" | "hip" | "groin" | "buttock" | "thigh" | "knee" | "shin" | "calf" | "achilles" | "ankle" | "foot";
        /**
         * RepetitionDose
         * @description Usual dose of a variant that is counted.
         */
        RepetitionDose: {
            /**
             * Reps
             * @description Fewest and most repetitions in a set, a side where done for each side.
             */
            reps: [
                number,
                number
            ];
        };
        /**
         * Rest
         * @description A day named as rest. It is never prescribed work and never counted.
         */
        "Rest-Input": {
            /**
             * Key
             * @description Unique in the program; kept when the program is edited.
             */
            key: string;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            kind: "rest";
            /** Name */
            name: string;
            /**
             * Note
             * @default
             */
            note: string;
        };
        /**
         * Rest
         * @description A day named as rest. It is never prescribed work and never counted.
         */
        "Rest-Output": {
            /**
             * Key
             * @description Unique in the program; kept when the program is edited.
             */
            key: string;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            kind: "rest";
            /** Name */
            name: string;
            /**
             * Note
             * @default
             */
            note: string;
        };
        /**
         * ResultOut
         * @description One result. ``why_no_norm`` says why there is no reference, where there is none.
         */
        ResultOut: {
            code: components["schemas"]["TestCode"];
            /** Id */
            id: string;
            /** Note */
            note: string;
            /** Protocol */
            protocol: {
                [key: string]: string;
            };
            /** Reading */
            reading: string;
            /**
             * Recorded At
             * Format: date-time
             */
            recorded_at: string;
            reference: components["schemas"]["ReferenceOut"] | null;
            side: components["schemas"]["TestSide"] | null;
            /**
             * Taken By
             * @description Name of the practitioner
             */
            taken_by: string;
            /**
             * Taken On
             * Format: date
             */
            taken_on: string;
            /** Unit */
            unit: string;
            /** Value */
            value: number;
            /** Why No Norm */
            why_no_norm: string | null;
        };
        /**
         * ResumeBody
         * @description A season that paused: why, its first day missed, and the day on which it is taken up again.
         */
        ResumeBody: {
            reason: components["schemas"]["Pause"];
            /**
             * Resume On
             * Format: date
             */
            resume_on: string;
            season: components["schemas"]["SeasonPlan-Input"];
            /**
             * Since
             * Format: date
             */
            since: string;
        };
        /**
         * Resumption
         * @description The rest of the season to plan, and the step back that it begins with.
         */
        Resumption: {
            /** @description The longest walk that was planned before the pause. */
            before: components["schemas"]["WalkLevel"];
            /**
             * Keeps Percent
             * @description How much of it the first walk keeps.
             */
            keeps_percent: number;
            season: components["schemas"]["SeasonPlan-Output"];
        };
        /**
         * RetentionBody
         * @description Years after archiving, or null: kept until someone decides. It must be said; there is no default.
         */
        RetentionBody: {
            /** Years */
            years: number | null;
        };
        /**
         * RetentionOut
         * @description How long records are kept, and what is due.
         */
        RetentionOut: {
            /**
             * Chosen At
             * @description null: nobody has chosen yet.
             */
            chosen_at: string | null;
            /** Due */
            due: components["schemas"]["Due"][];
            /** Erasures */
            erasures: components["schemas"]["ErasureOut"][];
            /**
             * Names
             * @description Names of archived clients by id.
             */
            names: {
                [key: string]: string;
            };
            /** Years */
            years: number | null;
        };
        /**
         * RetryOut
         * @description Whether an item could be taken now, else why not.
         */
        RetryOut: {
            /** Accepted */
            accepted: boolean;
            /** Problem */
            problem: {
                [key: string]: unknown;
            } | null;
        };
        /**
         * Ridge
         * @description The weeks of a program as loads, planned and done.
         */
        Ridge: {
            goal: components["schemas"]["GoalOut"] | null;
            /** Heard Until */
            heard_until: string | null;
            /**
             * Today
             * Format: date
             */
            today: string;
            /** Weeks */
            weeks: components["schemas"]["RidgeWeek"][];
        };
        /**
         * RidgeWeek
         * @description One week of the ridge, Monday to Sunday.
         */
        RidgeWeek: {
            /** Done Load */
            done_load: number;
            /**
             * Due Share
             * @description Running week only: share of its planned load that was due by the last day heard, over 0 to 1. Draw the week at done_load / due_share; null while nothing is due.
             */
            due_share: number | null;
            /**
             * Heard
             * @enum {string}
             */
            heard: "all" | "part" | "none";
            /** Planned Load */
            planned_load: number;
            /**
             * Starts On
             * Format: date
             */
            starts_on: string;
        };
        /**
         * Role
         * @description What a person of the practice may do.
         * @enum {string}
         */
        Role: "owner" | "practitioner" | "read_only";
        /**
         * Row
         * @description One client in the caseload.
         */
        Row: {
            adherence: components["schemas"]["AdherencePair"];
            client: components["schemas"]["RowClient"];
            goal: components["schemas"]["GoalAhead"] | null;
            group: components["schemas"]["Group"];
            /** Happened */
            happened: string;
            /** Last Days */
            last_days: components["schemas"]["DayMark"][];
            /** Last Heard At */
            last_heard_at: string | null;
            /** Open Flags */
            open_flags: components["schemas"]["FlagShort"][];
            pain: components["schemas"]["WorstPain"] | null;
            /** Place */
            place: number;
            /**
             * Ready
             * @description How many movements are ready for more.
             */
            ready: number;
            reason: components["schemas"]["steadfoot__monitoring__person_schemas__ReasonOut"];
            ridge: components["schemas"]["Ridge"];
            suggestion: components["schemas"]["RowSuggestion"] | null;
            /** Weeks To Trip */
            weeks_to_trip: number | null;
        };
        /**
         * RowClient
         * @description Whose row it is. The age is that of the year, since only the year of birth is kept.
         */
        RowClient: {
            /** Age */
            age: number | null;
            /** Display Name */
            display_name: string;
            /** Id */
            id: string;
        };
        /**
         * RowSuggestion
         * @description What could be done next, and the flag that is answered by it; ``decide`` leads to the suggestions on
         *     progress.
         */
        RowSuggestion: {
            /** Action */
            action: components["schemas"]["Action"] | "decide" | null;
            /** Flag Id */
            flag_id: string | null;
            /** Sentence */
            sentence: string;
        };
        /**
         * ScreeningAnswers
         * @description The inputs of the table. Known disease is of heart, vessels, metabolism or kidneys.
         */
        ScreeningAnswers: {
            /** @description How hard training and trip will be */
            intensity: components["schemas"]["Intensity"];
            /** Known Disease */
            known_disease: boolean;
            /** Regular Activity */
            regular_activity: boolean;
            /** Signs Or Symptoms */
            signs_or_symptoms: boolean;
        };
        /**
         * ScreeningBody
         * @description Answers taken with the practitioner.
         */
        ScreeningBody: {
            answers: components["schemas"]["ScreeningAnswers"];
            /**
             * Details
             * @description Codes of the questions answered with yes
             * @default []
             */
            details: string[];
        };
        /**
         * ScreeningList
         * @description Screenings, newest first, and where the client stands by the newest.
         */
        ScreeningList: {
            /** Items */
            items: components["schemas"]["ScreeningOut"][];
            state: components["schemas"]["ScreeningState"];
        };
        /**
         * ScreeningOut
         * @description A screening with what it asked for.
         */
        ScreeningOut: {
            /**
             * Answered At
             * Format: date-time
             */
            answered_at: string;
            /**
             * Answered By
             * @description Name of the practitioner; null where the client answered
             */
            answered_by: string | null;
            answers: components["schemas"]["ScreeningAnswers"];
            cleared: components["schemas"]["ClearanceOut"] | null;
            /** Details */
            details: string[];
            /** Id */
            id: string;
            /**
             * Local Day
             * Format: date
             */
            local_day: string;
            outcome: components["schemas"]["Clearance"];
            /** Reasons */
            reasons: components["schemas"]["ScreeningReason"][];
            /**
             * Source
             * @enum {string}
             */
            source: "client" | "practitioner";
            source_work: components["schemas"]["SourceWork"];
        };
        /**
         * ScreeningReason
         * @description One reason of an outcome, the weightiest first.
         */
        ScreeningReason: {
            /** Text */
            text: string;
        };
        /**
         * ScreeningState
         * @description Where a client stands by their newest screening.
         * @enum {string}
         */
        ScreeningState: "not_screened" | "clear" | "clearance_recommended" | "clearance_required" | "cleared";
        /**
         * SeasonBody
         * @description A season to plan.
         */
        SeasonBody: {
            season: components["schemas"]["SeasonPlan-Input"];
        };
        /**
         * SeasonNames
         * @description What the sessions are called that the season brings; the client sees these.
         */
        SeasonNames: {
            /**
             * Cardio
             * @default Easy endurance
             */
            cardio: string;
            /**
             * Cardio Activity
             * @default Bike, swim or brisk walk, easy
             */
            cardio_activity: string;
            /**
             * Long Walk
             * @default Long walk
             */
            long_walk: string;
            /**
             * Rest
             * @default Rest and packing
             */
            rest: string;
            /**
             * Short Walk
             * @default Shorter walk
             */
            short_walk: string;
        };
        /**
         * SeasonOut
         * @description A season as the rules propose it; nothing is stored.
         */
        SeasonOut: {
            /**
             * Notes
             * @description What else to know, a sentence each.
             */
            notes: string[];
            /** Shortfalls */
            shortfalls: components["schemas"]["ShortfallOut"][];
            /** Weeks */
            weeks: components["schemas"]["SeasonWeek"][];
        };
        /**
         * SeasonPlan
         * @description What a season is planned from.
         */
        "SeasonPlan-Input": {
            /**
             * Accepted
             * @description What the person goes with knowingly although walks do not grow to it in time.
             * @default []
             */
            accepted: components["schemas"]["Thing"][];
            /**
             * Away
             * @default []
             */
            away: components["schemas"]["Away"][];
            /**
             * Cardio A Week
             * @description 0 to 6; null fills the days that are left.
             */
            cardio_a_week?: number | null;
            /**
             * Circuits
             * @description Keys of the circuits that strength sessions take in turn.
             * @default []
             */
            circuits: string[];
            /** @description What walks should grow to: the trip's longest day. */
            longest_day: components["schemas"]["WalkLevel"];
            /** @description The pause after which it was planned again. */
            paused?: components["schemas"]["PausedFor"] | null;
            /**
             * Pins
             * @default []
             */
            pins: components["schemas"]["PinnedSession-Input"][];
            /**
             * Starts On
             * Format: date
             */
            starts_on: string;
            /** Strength A Week */
            strength_a_week: number;
            /**
             * Things A Week
             * @description How many of distance, ascent and pack grow in one week, 1 to 3.
             * @default 2
             */
            things_a_week: number;
            /**
             * Trip On
             * Format: date
             * @description First day of the trip.
             */
            trip_on: string;
            /** @description The longest walk of late. */
            walking: components["schemas"]["WalkLevel"];
            /**
             * Walks A Week
             * @default 1
             */
            walks_a_week: number;
            /** Weekdays */
            weekdays: components["schemas"]["Weekday"][];
        };
        /**
         * SeasonPlan
         * @description What a season is planned from.
         */
        "SeasonPlan-Output": {
            /**
             * Accepted
             * @description What the person goes with knowingly although walks do not grow to it in time.
             * @default []
             */
            accepted: components["schemas"]["Thing"][];
            /**
             * Away
             * @default []
             */
            away: components["schemas"]["Away"][];
            /**
             * Cardio A Week
             * @description 0 to 6; null fills the days that are left.
             */
            cardio_a_week: number | null;
            /**
             * Circuits
             * @description Keys of the circuits that strength sessions take in turn.
             * @default []
             */
            circuits: string[];
            /** @description What walks should grow to: the trip's longest day. */
            longest_day: components["schemas"]["WalkLevel"];
            /** @description The pause after which it was planned again. */
            paused: components["schemas"]["PausedFor"] | null;
            /**
             * Pins
             * @default []
             */
            pins: components["schemas"]["PinnedSession-Output"][];
            /**
             * Starts On
             * Format: date
             */
            starts_on: string;
            /** Strength A Week */
            strength_a_week: number;
            /**
             * Things A Week
             * @description How many of distance, ascent and pack grow in one week, 1 to 3.
             * @default 2
             */
            things_a_week: number;
            /**
             * Trip On
             * Format: date
             * @description First day of the trip.
             */
            trip_on: string;
            /** @description The longest walk of late. */
            walking: components["schemas"]["WalkLevel"];
            /**
             * Walks A Week
             * @default 1
             */
            walks_a_week: number;
            /** Weekdays */
            weekdays: components["schemas"]["Weekday"][];
        };
        /**
         * SeasonSession
         * @description A proposed session.
         */
        SeasonSession: {
            activity: components["schemas"]["steadfoot__rules__season_request__Activity"];
            /**
             * Date
             * Format: date
             */
            date: string;
            /**
             * Effort
             * @description Expected effort, 0 to 10.
             */
            effort: number;
            /** Locked */
            locked: boolean;
            /** Minutes */
            minutes: number;
            /** Pinned */
            pinned: boolean;
            walk: components["schemas"]["WalkLevel"] | null;
        };
        /**
         * SeasonStart
         * @description What a season page begins with: what was planned before, and what is known of the person.
         */
        SeasonStart: {
            longest_day: components["schemas"]["WalkLevel"];
            /**
             * Longest Day Known
             * @description Whether the longest day is the trip's own, or assumed.
             */
            longest_day_known: boolean;
            /** @description What the draft, else the current program, was planned from. */
            season: components["schemas"]["SeasonPlan-Output"] | null;
            /**
             * Starts On
             * Format: date
             */
            starts_on: string;
            /**
             * Today
             * Format: date
             * @description The client's calendar day.
             */
            today: string;
            /** Trip Name */
            trip_name: string;
            /** Trip On */
            trip_on: string | null;
            /**
             * Walked On
             * @description Day of the logged walk that the level is from; null: it is assumed.
             */
            walked_on: string | null;
            walking: components["schemas"]["WalkLevel"];
        };
        /**
         * SeasonWeek
         * @description A week counted back from the trip; the first may be shorter.
         */
        SeasonWeek: {
            /**
             * Ends On
             * Format: date
             */
            ends_on: string;
            phase: components["schemas"]["Phase"];
            /**
             * Planned Load
             * @description Effort times minutes, summed, arbitrary units.
             */
            planned_load: number;
            /** Sessions */
            sessions: components["schemas"]["SeasonSession"][];
            /**
             * Starts On
             * Format: date
             */
            starts_on: string;
        };
        /**
         * SessionOut
         * @description A planned session with what was reported. Loads are effort times minutes.
         */
        SessionOut: {
            /**
             * Date
             * Format: date
             */
            date: string;
            /** Done Load */
            done_load: number | null;
            /** Done On */
            done_on: string | null;
            /** Effort */
            effort: number | null;
            /** Kind */
            kind: string;
            /** Minutes */
            minutes: number | null;
            /** Name */
            name: string;
            /** Planned Id */
            planned_id: string;
            /** Planned Load */
            planned_load: number | null;
            /** Program Version */
            program_version: number;
            /** Sets Done */
            sets_done: number;
            /** Sets Prescribed */
            sets_prescribed: number;
            /**
             * Settled
             * @description False while the phone may hold more than it has told.
             */
            settled: boolean;
            status: components["schemas"]["Status"];
        };
        /**
         * SessionSum
         * @description What one session asks for.
         */
        SessionSum: {
            /** Key */
            key: string;
            /**
             * Minutes
             * @description Expected minutes; null where nothing tells.
             */
            minutes: number | null;
            /**
             * Planned Load
             * @description Expected effort (0 to 10) times minutes, arbitrary units.
             */
            planned_load: number | null;
            /** Sets */
            sets: number;
        };
        /**
         * Severity
         * @description An error stops publishing, a warning does not.
         * @enum {string}
         */
        Severity: "error" | "warning";
        /**
         * Sex
         * @description Sex, as the norms are split by it.
         * @enum {string}
         */
        Sex: "female" | "male";
        /**
         * Shape
         * @description What kind of comparison a reference allows.
         * @enum {string}
         */
        Shape: "range" | "mean" | "median" | "predicted" | "grades";
        /**
         * ShortfallOut
         * @description What walks do not grow to in time, in the unit that the thing's name ends with.
         */
        ShortfallOut: {
            /** Accepted */
            accepted: boolean;
            /** Reached */
            reached: number;
            /** Short By */
            short_by: number;
            thing: components["schemas"]["Thing"];
            /** Wanted */
            wanted: number;
            /**
             * Weeks More
             * @description Weeks that the whole goal would take more.
             */
            weeks_more: number;
        };
        /**
         * Shoulders
         * @description How far the shoulder blades carry both shoulder joints along the thorax: forward (apart), up.
         */
        Shoulders: {
            /** Forward */
            forward?: number | null;
            /** Up */
            up?: number | null;
        };
        /**
         * Sides
         * @description Whether a dose is for each side in turn or for both together.
         * @enum {string}
         */
        Sides: "each" | "both";
        /**
         * SignedNote
         * @description A note as it was signed, with what it rested on then.
         */
        SignedNote: {
            /** Id */
            id: string;
            shown: components["schemas"]["ReadinessShown"];
            /**
             * Signed At
             * Format: date-time
             */
            signed_at: string;
            /** Signed By */
            signed_by: string;
            /**
             * Superseded At
             * @description When a newer note took its place; null while it stands.
             */
            superseded_at: string | null;
            verdict: components["schemas"]["Verdict"];
            /** Words */
            words: string;
        };
        /**
         * SignInBody
         * @description Who signs in; what they have beside the password in a second try, once it is asked for.
         */
        SignInBody: {
            /** Code */
            code?: string | null;
            /** Email */
            email: string;
            passkey?: components["schemas"]["PasskeyAnswer"] | null;
            /** Password */
            password: string;
            /** Recovery Code */
            recovery_code?: string | null;
        };
        /**
         * SlopesOut
         * @description How steep a leg is; both empty for a typed leg, and where no heights are known.
         */
        SlopesOut: {
            /** Grades */
            grades: components["schemas"]["GradeOut"][];
            /** Steepest Descents */
            steepest_descents: components["schemas"]["DescentOut"][];
        };
        /**
         * Sources
         * @description Where our numbers come from.
         */
        Sources: {
            /** Numbers */
            numbers: components["schemas"]["NumberOut"][];
            /** Works */
            works: components["schemas"]["WorkOut"][];
        };
        /**
         * SourceWork
         * @description The work that a rule or a norm follows.
         */
        SourceWork: {
            /** Authors */
            authors: string;
            /** Key */
            key: string;
            /** Population */
            population: string;
            /** Title */
            title: string;
            /** Where */
            where: string;
            /** Year */
            year: string;
        };
        /**
         * SpanAdherence
         * @description Adherence over a span of days, by session and by set.
         */
        SpanAdherence: {
            by_session: components["schemas"]["RatioOut"];
            by_set: components["schemas"]["RatioOut"];
        };
        /**
         * StartOut
         * @description A movement to begin from; every key says all of its numbers.
         */
        StartOut: {
            movement: components["schemas"]["Movement"];
        };
        /**
         * Status
         * @description What is known of a planned session.
         * @enum {string}
         */
        Status: "done" | "partly" | "open" | "missed" | "not_heard" | "to_come";
        /**
         * Activity
         * @description Something that is hard for the client, in their words; 0 cannot do it, 10 as before.
         */
        steadfoot__assessment__schemas__Activity: {
            /** Name */
            name: string;
            /** Rating */
            rating: number;
        };
        /**
         * ChangeOut
         * @description The change since the time before; real only from the smallest real change on.
         */
        steadfoot__assessment__schemas__ChangeOut: {
            /** Is Real */
            is_real: boolean;
            /** Mdc */
            mdc: number | null;
            /** Parts */
            parts: components["schemas"]["ChangePart"][];
            /** Words */
            words: string;
        };
        /**
         * ChangeOut
         * @description Something new for the phone.
         */
        steadfoot__checkins__schemas__ChangeOut: {
            /**
             * At
             * Format: date-time
             */
            at: string;
            /** Body */
            body: {
                [key: string]: unknown;
            };
            /** Kind */
            kind: string;
            /** Number */
            number: number;
        };
        /**
         * Fault
         * @description What a check of drawings found.
         * @enum {string}
         */
        steadfoot__exercises__own_schemas__Fault: "bone stretched" | "out of reach" | "not solved" | "slides" | "sinks in" | "joint range" | "falls over" | "jumps";
        /**
         * Fault
         * @description A way it goes wrong, and what to do instead.
         */
        steadfoot__exercises__schemas__Fault: {
            /** Instead */
            instead: string;
            /** See */
            see: string;
        };
        /**
         * ReasonOut
         * @description One reason for another movement.
         */
        steadfoot__exercises__schemas__ReasonOut: {
            /** @description What the reason is about. */
            because: components["schemas"]["Because"];
            /** Sentence */
            sentence: string;
        };
        /**
         * ReasonOut
         * @description Why a client has their place.
         */
        steadfoot__monitoring__person_schemas__ReasonOut: {
            kind: components["schemas"]["Kind"];
            /** Rule */
            rule: string;
            /** Sentence */
            sentence: string;
            /** Since */
            since: string | null;
            /** Source */
            source: string;
        };
        /**
         * Activity
         * @description What a planned session is.
         * @enum {string}
         */
        steadfoot__rules__season_request__Activity: "strength" | "walk" | "cardio";
        /**
         * StretchPart
         * @description A piece of the way, in metres: where it starts, how long it is, the height at its start, how much it gains.
         */
        StretchPart: {
            /** Height M */
            height_m: number | null;
            /** Length M */
            length_m: number;
            /**
             * Rise M
             * @description Negative for lost; null where no height is known
             */
            rise_m: number | null;
            /** Start M */
            start_m: number;
        };
        /**
         * Subject
         * @description What is compared. Tests have the codes of their catalogue.
         * @enum {string}
         */
        Subject: "longest_day" | "ascent" | "descent" | "pack" | "whole_day" | "days_in_a_row" | "effort" | "pain_at_rest" | "chair-stand-30s" | "heel-rise" | "step-down" | "single-leg-stance-open" | "side-bridge";
        /**
         * SuccessorOut
         * @description A new number range for a phone whose numbers are used by another one.
         */
        SuccessorOut: {
            /** Device Id */
            device_id: string;
            /** Token */
            token: string;
        };
        /**
         * Suggested
         * @description What to do with one prescription.
         * @enum {string}
         */
        Suggested: "progress" | "progress_reps" | "progress_load" | "progress_variant" | "progress_rounds" | "hold" | "regress" | "deload" | "rest";
        /**
         * SuggestionOut
         * @description What the last sessions suggest for one prescription. Nothing is changed until a person accepts it.
         */
        SuggestionOut: {
            /**
             * Can Accept
             * @description Whether accepting changes the program.
             */
            can_accept: boolean;
            /**
             * Effect
             * @description What the phone would show; null where nothing would change.
             */
            effect: string | null;
            /** Exercise */
            exercise: string;
            /** Id */
            id: string;
            kind: components["schemas"]["Kind"];
            now: components["schemas"]["Prescription-Output"];
            /**
             * Prescription
             * @description Key of the prescription.
             */
            prescription: string;
            /** Reasons */
            reasons: components["schemas"]["ReasonEvidence"][];
            rule: components["schemas"]["ProgressionRule"];
            /** Sentence */
            sentence: string;
            /**
             * Session
             * @description Name of the circuit that it belongs to.
             */
            session: string;
            /** Source */
            source: string;
            suggestion: components["schemas"]["Suggested"];
            /** @description The prescription after accepting, to be edited; null: as it is. */
            then: components["schemas"]["Prescription-Output"] | null;
            /** Variant */
            variant: string;
            /** Would Change */
            would_change: string;
        };
        /**
         * Suggestions
         * @description Suggestions for every prescription of the running program; those that change something first.
         */
        Suggestions: {
            /** Declined */
            declined: components["schemas"]["DeclinedOut"][];
            /** Items */
            items: components["schemas"]["SuggestionOut"][];
            /** Program Number */
            program_number: number | null;
        };
        /**
         * SuggestionsShort
         * @description How many movements are ready for more, and that in a sentence; null where there is none.
         */
        SuggestionsShort: {
            /** Ready */
            ready: number;
            /** Sentence */
            sentence: string | null;
        };
        /**
         * SymmetryOut
         * @description The newest results of both sides: the lower in percent of the higher.
         */
        SymmetryOut: {
            /** Even Enough */
            even_enough: boolean;
            /** Percent */
            percent: number;
            /** Words */
            words: string;
        };
        /**
         * SyncBody
         * @description What a phone sends. Each event is judged by itself; see decision 0001 for kinds and bodies.
         */
        SyncBody: {
            /**
             * Cursor
             * @default 0
             */
            cursor: number;
            /**
             * Events
             * @default []
             */
            events: unknown[];
        };
        /**
         * SyncOut
         * @description What the practice now holds of this phone, and what is new for it.
         */
        SyncOut: {
            /** Acknowledged Through */
            acknowledged_through: number;
            /** Changes */
            changes: components["schemas"]["steadfoot__checkins__schemas__ChangeOut"][];
            /** Cursor */
            cursor: number;
            /** Refused */
            refused: components["schemas"]["Refused"][];
            /** Server Epoch */
            server_epoch: string;
            /**
             * Server Time
             * Format: date-time
             */
            server_time: string;
        };
        /**
         * TemplateBody
         * @description A program without dates: sessions, and which of them come in which week.
         */
        TemplateBody: {
            /**
             * About
             * @description For whom and for what.
             * @default
             */
            about: string;
            /** Name */
            name: string;
            /** Sessions */
            sessions: (components["schemas"]["Circuit-Input"] | components["schemas"]["Walk-Input"] | components["schemas"]["Cardio-Input"] | components["schemas"]["Rest-Input"])[];
            /**
             * Weeks
             * @description Week by week from the start; the last one repeats until the program ends.
             */
            weeks: components["schemas"]["TemplateDay-Input"][][];
        };
        /**
         * TemplateDay
         * @description One planned session of a template's week.
         */
        "TemplateDay-Input": {
            /**
             * Fixed Day
             * @description On this day only; otherwise until the end of its week.
             * @default false
             */
            fixed_day: boolean;
            /**
             * Session
             * @description Key of the session.
             */
            session: string;
            weekday: components["schemas"]["Weekday"];
        };
        /**
         * TemplateDay
         * @description One planned session of a template's week.
         */
        "TemplateDay-Output": {
            /**
             * Fixed Day
             * @description On this day only; otherwise until the end of its week.
             * @default false
             */
            fixed_day: boolean;
            /**
             * Session
             * @description Key of the session.
             */
            session: string;
            weekday: components["schemas"]["Weekday"];
        };
        /**
         * TemplateList
         * @description All templates: the practice's own by name, then those that come with the program.
         */
        TemplateList: {
            /** Items */
            items: components["schemas"]["TemplateOut"][];
        };
        /**
         * TemplateOut
         * @description A template, the practice's own or one that comes with the program.
         */
        TemplateOut: {
            /** About */
            about: string;
            /**
             * Id
             * @description UUIDv7 of the practice's own, a code for those that come with the program.
             */
            id: string;
            /** Name */
            name: string;
            /** Sessions */
            sessions: (components["schemas"]["Circuit-Output"] | components["schemas"]["Walk-Output"] | components["schemas"]["Cardio-Output"] | components["schemas"]["Rest-Output"])[];
            /** Shipped */
            shipped: boolean;
            /** Weeks */
            weeks: components["schemas"]["TemplateDay-Output"][][];
        };
        /**
         * TemplatePatch
         * @description What to change of a template; what is left out stays.
         */
        TemplatePatch: {
            /** About */
            about?: string | null;
            /** Name */
            name?: string | null;
        };
        /**
         * TestBody
         * @description A result in the test's unit. Only results of one protocol are compared with each other.
         */
        TestBody: {
            code: components["schemas"]["TestCode"];
            /**
             * Note
             * @default
             */
            note: string;
            /**
             * Protocol
             * @description How it was done, where that can differ: {"step_cm": "15"}
             * @default {}
             */
            protocol: {
                [key: string]: string;
            };
            /** @description Needed for tests of one side, refused for the others */
            side?: components["schemas"]["TestSide"] | null;
            /**
             * Taken On
             * @description The client's today if left out
             */
            taken_on?: string | null;
            /** Value */
            value: number;
        };
        /**
         * TestCode
         * @description The baseline tests by their codes.
         * @enum {string}
         */
        TestCode: "chair-stand-30s" | "single-leg-stance-open" | "single-leg-stance-closed" | "side-bridge" | "heel-rise" | "six-minute-walk" | "step-test-3min" | "step-down" | "reach-anterior";
        /**
         * TestItem
         * @description A client's results of one test, newest first.
         */
        TestItem: {
            change: components["schemas"]["steadfoot__assessment__schemas__ChangeOut"] | null;
            code: components["schemas"]["TestCode"];
            /** Name */
            name: string;
            /** Results */
            results: components["schemas"]["ResultOut"][];
            symmetry: components["schemas"]["SymmetryOut"] | null;
            trend: components["schemas"]["TrendOut"] | null;
            /** Unit */
            unit: string;
        };
        /**
         * TestList
         * @description The baseline tests.
         */
        TestList: {
            /** Items */
            items: components["schemas"]["TestOut"][];
        };
        /**
         * TestOut
         * @description A baseline test: how it is done, and what can come of it.
         */
        TestOut: {
            /**
             * Better
             * @enum {string}
             */
            better: "higher" | "lower";
            /** Cautions */
            cautions: string[];
            code: components["schemas"]["TestCode"];
            /**
             * Counter Seconds
             * @description Length of a test of a fixed time; null where it ends by itself
             */
            counter_seconds: number | null;
            kind: components["schemas"]["Measure"];
            /**
             * Mdc
             * @description Smallest real change in the unit; null where none is known
             */
            mdc: number | null;
            /** Name */
            name: string;
            /** Protocol */
            protocol: string[];
            range: components["schemas"]["RangeOut"];
            /** Sides */
            sides: boolean;
            source_work: components["schemas"]["SourceWork"];
            /** Unit */
            unit: string;
        };
        /**
         * TestSide
         * @description The side of the body that was tested.
         * @enum {string}
         */
        TestSide: "left" | "right";
        /**
         * Thing
         * @description What grows of a walk.
         * @enum {string}
         */
        Thing: "distance_km" | "ascent_m" | "pack_kg";
        /**
         * Thresholds
         * @description Numbers of the rules that a practitioner may set for one client.
         */
        Thresholds: {
            /**
             * Pain Stop
             * @description Pain rating, 0 to 10, from which a movement is stopped
             * @default 6
             */
            pain_stop: number;
        };
        /**
         * Timeline
         * @description A page of what happened, oldest first.
         */
        Timeline: {
            /** Items */
            items: components["schemas"]["TimelineItem"][];
            /** Next Cursor */
            next_cursor: string | null;
        };
        /**
         * TimelineItem
         * @description One thing that happened.
         */
        TimelineItem: {
            /**
             * At
             * Format: date-time
             */
            at: string;
            /** Body */
            body: {
                [key: string]: unknown;
            };
            /** Event Id */
            event_id: string | null;
            /** Kind */
            kind: string;
            /**
             * Local Date
             * Format: date
             */
            local_date: string;
            /** Source */
            source: string;
        };
        /**
         * TotpBegun
         * @description The secret for an app for codes, shown once; it counts after the first right code.
         */
        TotpBegun: {
            /** Qr Svg */
            qr_svg: string;
            /** Secret */
            secret: string;
            /** Uri */
            uri: string;
        };
        /**
         * TotpCode
         * @description The code that the app shows.
         */
        TotpCode: {
            /** Code */
            code: string;
        };
        /**
         * TrendOut
         * @description The course from the first result to the last, from three results on.
         */
        TrendOut: {
            /** Words */
            words: string;
        };
        /**
         * TripBody
         * @description The whole trip, as it shall be from now on.
         */
        TripBody: {
            /**
             * @description What most of the way is made of
             * @default dirt_road
             */
            ground: components["schemas"]["Ground"];
            /** Legs */
            legs: components["schemas"]["LegBody"][];
            /**
             * Pack Kg
             * @description Pack with all in it, where a leg has none of its own
             * @default 0
             */
            pack_kg: number;
        };
        /**
         * TripOut
         * @description The trip. Name and first day are the goal of the current program, null where there is none.
         */
        TripOut: {
            ground: components["schemas"]["Ground"];
            /** Legs */
            legs: components["schemas"]["LegOut"][];
            /** Name */
            name: string | null;
            /** Pack Kg */
            pack_kg: number;
            /** Saved At */
            saved_at: string | null;
            /**
             * Saved By
             * @description Name of the practitioner
             */
            saved_by: string | null;
            /**
             * Slopes
             * @description Of each leg, in the order of the legs
             */
            slopes: components["schemas"]["SlopesOut"][];
            /** Starts On */
            starts_on: string | null;
            /**
             * Version
             * @description 0: nothing is kept yet
             */
            version: number;
        };
        /**
         * Variant
         * @description One rung of the ladder.
         */
        Variant: {
            /** Dose */
            dose: components["schemas"]["RepetitionDose"] | components["schemas"]["HoldDose"];
            /**
             * Drawn
             * @description Whether there is a drawing of it; set from the poses.
             * @default false
             */
            drawn: boolean;
            /**
             * How
             * @description What the client does, in order.
             */
            how: string[];
            /**
             * Kit
             * @description What is needed in the house, all of it.
             */
            kit: components["schemas"]["Kit"][];
            load: components["schemas"]["LoadNeed"];
            /**
             * Name
             * @description Name in full words, read after the exercise's: 'hand on the rail'.
             */
            name: string;
            /**
             * Short
             * @description Caption for a narrow place, at most 14 letters; may be empty.
             */
            short: string;
            /** @description Done for each side in turn, or with both together. */
            sides: components["schemas"]["Sides"];
            /**
             * Variant
             * @description Code of the variant, unique within its exercise.
             */
            variant: string;
        };
        /**
         * VariantText
         * @description One rung of the ladder, as it is written.
         */
        VariantText: {
            /** Dose */
            dose: components["schemas"]["RepetitionDose"] | components["schemas"]["HoldDose"];
            /**
             * How
             * @description What the client does, in order.
             */
            how: string[];
            /**
             * Kit
             * @description What is needed in the house, all of it.
             */
            kit: components["schemas"]["Kit"][];
            load: components["schemas"]["LoadNeed"];
            /**
             * Name
             * @description Name in full words, read after the exercise's: 'hand on the rail'.
             */
            name: string;
            /**
             * Short
             * @description Caption for a narrow place, at most 14 letters; may be empty.
             */
            short: string;
            /** @description Done for each side in turn, or with both together. */
            sides: components["schemas"]["Sides"];
            /**
             * Variant
             * @description Code of the variant, unique within its exercise.
             */
            variant: string;
        };
        /**
         * Verdict
         * @description What a practitioner signs: go as planned, go with changes, or not yet.
         * @enum {string}
         */
        Verdict: "go" | "adapt" | "defer";
        /**
         * WaitingColleague
         * @description Someone who was invited and has not come yet.
         */
        WaitingColleague: {
            /** Display Name */
            display_name: string;
            /** Email */
            email: string;
            /**
             * Expires At
             * Format: date-time
             */
            expires_at: string;
            /** Id */
            id: string;
            role: components["schemas"]["Role"];
        };
        /**
         * WaitingMark
         * @description Why a phone is not heard yet.
         */
        WaitingMark: {
            /** Check Number */
            check_number: string;
            /** Pairing Id */
            pairing_id: string;
        };
        /**
         * WaitingOut
         * @description A queue of this practice.
         */
        WaitingOut: {
            /** Name */
            name: string;
            /** Number */
            number: number;
            /** Oldest At */
            oldest_at: string | null;
        };
        /**
         * WaitingPairing
         * @description A phone that waits until someone has compared the number it shows.
         */
        WaitingPairing: {
            /** Check Number */
            check_number: string;
            /** Client Id */
            client_id: string;
            /** Client Name */
            client_name: string;
            /**
             * Created At
             * Format: date-time
             */
            created_at: string;
            /** Id */
            id: string;
        };
        /**
         * WaitingPairings
         * @description Phones that wait.
         */
        WaitingPairings: {
            /** Items */
            items: components["schemas"]["WaitingPairing"][];
        };
        /**
         * Walk
         * @description A walk, with or without a pack.
         */
        "Walk-Input": {
            /**
             * Ascent M
             * @description Metres up, 0 to 5000.
             * @default 0
             */
            ascent_m: number;
            /**
             * Descent M
             * @description Metres down, 0 to 5000.
             * @default 0
             */
            descent_m: number;
            /**
             * Distance Km
             * @description Kilometres, up to 100.
             */
            distance_km: number;
            /**
             * Expected Effort
             * @description Expected session effort, 0 to 10.
             */
            expected_effort: number;
            /**
             * Expected Minutes
             * @description Minutes; null: estimated from the dose.
             */
            expected_minutes?: number | null;
            /**
             * Key
             * @description Unique in the program; kept when the program is edited.
             */
            key: string;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            kind: "walk";
            /** Name */
            name: string;
            /**
             * Note
             * @default
             */
            note: string;
            /**
             * Pack Kg
             * @description Weight of the pack in kg, 0 to 60.
             * @default 0
             */
            pack_kg: number;
        };
        /**
         * Walk
         * @description A walk, with or without a pack.
         */
        "Walk-Output": {
            /**
             * Ascent M
             * @description Metres up, 0 to 5000.
             * @default 0
             */
            ascent_m: number;
            /**
             * Descent M
             * @description Metres down, 0 to 5000.
             * @default 0
             */
            descent_m: number;
            /**
             * Distance Km
             * @description Kilometres, up to 100.
             */
            distance_km: number;
            /**
             * Expected Effort
             * @description Expected session effort, 0 to 10.
             */
            expected_effort: number;
            /**
             * Expected Minutes
             * @description Minutes; null: estimated from the dose.
             */
            expected_minutes: number | null;
            /**
             * Key
             * @description Unique in the program; kept when the program is edited.
             */
            key: string;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            kind: "walk";
            /** Name */
            name: string;
            /**
             * Note
             * @default
             */
            note: string;
            /**
             * Pack Kg
             * @description Weight of the pack in kg, 0 to 60.
             * @default 0
             */
            pack_kg: number;
        };
        /**
         * WalkDone
         * @description A walk as it was entered: kilometres, metres up and down, minutes, kilograms carried.
         */
        WalkDone: {
            /** Ascent M */
            ascent_m: number;
            /** Descent M */
            descent_m: number;
            /** Distance Km */
            distance_km: number;
            /** Minutes */
            minutes: number;
            /** Pack Kg */
            pack_kg: number;
        };
        /**
         * WalkLevel
         * @description A walk as a level: how far, how high, with what on the back.
         */
        WalkLevel: {
            /**
             * Ascent M
             * @description Metres up, 0 to 5000.
             */
            ascent_m: number;
            /**
             * Distance Km
             * @description Kilometres, 1 to 100.
             */
            distance_km: number;
            /**
             * Pack Kg
             * @description Weight of the pack in kg, 0 to 60.
             */
            pack_kg: number;
        };
        /**
         * Weekday
         * @description A day of the week.
         * @enum {string}
         */
        Weekday: "mon" | "tue" | "wed" | "thu" | "fri" | "sat" | "sun";
        /**
         * WeekLoad
         * @description Load of one week, Monday to Sunday.
         */
        WeekLoad: {
            /** Load */
            load: number;
            /**
             * Starts On
             * Format: date
             */
            starts_on: string;
        };
        /**
         * WeekSum
         * @description What one week asks for, Monday to Sunday.
         */
        WeekSum: {
            /**
             * Minutes
             * @description Expected minutes; null where those of a session are not known.
             */
            minutes: number | null;
            /**
             * Planned Load
             * @description Sum of effort times minutes; null where not known.
             */
            planned_load: number | null;
            /** Sessions */
            sessions: number;
            /**
             * Starts On
             * Format: date
             */
            starts_on: string;
        };
        /**
         * Welcome
         * @description Whose practice a link leads to. ``returning``: they are of it already and only choose a new password.
         */
        Welcome: {
            /** Display Name */
            display_name: string;
            /** Email */
            email: string;
            /** Practice Name */
            practice_name: string;
            /** Returning */
            returning: boolean;
            role: components["schemas"]["Role"];
        };
        /**
         * When
         * @description When a record is erased: at once, or after days in which that can be taken back.
         * @enum {string}
         */
        When: "now" | "later";
        /**
         * Withdrawn
         * @description A slip that was taken back; it stays on record and shows nowhere.
         */
        Withdrawn: {
            /** Id */
            id: string;
            /**
             * Withdrawn At
             * Format: date-time
             */
            withdrawn_at: string;
        };
        /**
         * WorkOut
         * @description A work of the bibliography: what it is, whom it studied, how far it was read.
         */
        WorkOut: {
            /** Authors */
            authors: string;
            /** Key */
            key: string;
            /** Population */
            population: string;
            /** Read As */
            read_as: string;
            /** Title */
            title: string;
            /** Where */
            where: string;
            /** Year */
            year: string;
        };
        /**
         * WorstPain
         * @description The highest rating of the last 7 days.
         */
        WorstPain: {
            /**
             * On
             * Format: date
             */
            on: string;
            /** Region */
            region: string;
            /** Side */
            side: string;
            /** Worst 7D */
            worst_7d: number;
        };
    };
    responses: {
        /** @description The request cannot be read. */
        400: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Not signed in. */
        401: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Not allowed, or from another site. */
        403: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description There is no such thing in this practice. */
        404: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Not possible in this state. */
        409: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Someone else changed it first. */
        412: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description More bytes than are taken. */
        413: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Understood, but not acceptable. */
        422: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Too many tries; Retry-After says when again. */
        429: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description The database cannot be had for the moment; Retry-After says when again. */
        503: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
    };
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
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AccountOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            503: components["responses"]["503"];
        };
    };
    challengeConfirmation: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PasskeyOptions"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            503: components["responses"]["503"];
        };
    };
    confirmSession: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ConfirmBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    beginPasskey: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PasskeyOptions"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            503: components["responses"]["503"];
        };
    };
    addPasskey: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewPasskey"];
            };
        };
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecoveryCodes"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    removePasskey: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                passkey_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
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
                "application/json": components["schemas"]["PasswordBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    renewRecoveryCodes: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecoveryCodes"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            503: components["responses"]["503"];
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
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OpenSessions"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            503: components["responses"]["503"];
        };
    };
    endSessions: {
        parameters: {
            query?: {
                here?: boolean;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    endSession: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                session_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    beginTotp: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TotpBegun"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            503: components["responses"]["503"];
        };
    };
    removeTotp: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            503: components["responses"]["503"];
        };
    };
    activateTotp: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["TotpCode"];
            };
        };
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecoveryCodes"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    readAudit: {
        parameters: {
            query?: {
                /** @description Only rows with a lower number. */
                below?: number | null;
                client_id?: string | null;
                /** @description A day of the practice's time zone. */
                day?: string | null;
                practitioner_id?: string | null;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AuditPage"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    verifyAudit: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ChainState"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            503: components["responses"]["503"];
        };
    };
    exportAuditTable: {
        parameters: {
            query?: {
                client_id?: string | null;
                day?: string | null;
                practitioner_id?: string | null;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The file. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/csv": unknown;
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    exportAuditChain: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The file. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/x-ndjson": unknown;
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            503: components["responses"]["503"];
        };
    };
    readCaseload: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Caseload"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            503: components["responses"]["503"];
        };
    };
    printClassSheet: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ClassSheetBody"];
            };
        };
        responses: {
            /** @description The sheet. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/pdf": unknown;
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    listClients: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClientList"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            503: components["responses"]["503"];
        };
    };
    createClient: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ClientBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClientOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    readClient: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClientOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    updateClient: {
        parameters: {
            query?: never;
            header?: {
                "if-match"?: string | null;
            };
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ClientPatch"];
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClientOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    readAdherence: {
        parameters: {
            query?: {
                from?: string | null;
                to?: string | null;
            };
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AdherenceOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    recordClearance: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ClearanceBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClearanceOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            /** @description There is no screening to clear yet. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    listDevices: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DeviceList"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    readErasure: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ErasureState"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    eraseClient: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ErasureBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ErasureDone"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    keepClient: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    rateActivities: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["FunctionalScaleBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RatingOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    inviteClient: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["InvitationBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["InvitationOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    readLoad: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LoadOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    listMessages: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MessageList"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    sendMessage: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["MessageBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MessageOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    readOverview: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Overview"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    listPrograms: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProgramList"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    publishProgram: {
        parameters: {
            query?: never;
            header?: {
                /** @description ETag that the change was made from. */
                "if-match"?: string | null;
            };
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PublishBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProgramOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            /** @description The screening asks for a clearance that is not recorded. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            412: components["responses"]["412"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    readProgram: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
                /** @description Number of the version, 1 for the first. */
                number: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProgramOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    checkProgram: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CheckBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ChecksOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    readCurrentProgram: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProgramOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    printSheet: {
        parameters: {
            query?: {
                /** @description Of the sheet's own words. */
                language?: components["schemas"]["Language"];
                /** @description Large print. */
                large?: boolean;
                /** @description A4 or US Letter. */
                paper?: components["schemas"]["Paper"];
                /** @description Key of one session; all of them if left out. */
                session?: string | null;
            };
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The sheet. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/pdf": unknown;
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    printSheetWithInvitation: {
        parameters: {
            query?: {
                /** @description Of the sheet's own words. */
                language?: components["schemas"]["Language"];
                /** @description Large print. */
                large?: boolean;
                /** @description A4 or US Letter. */
                paper?: components["schemas"]["Paper"];
                /** @description Key of one session; all of them if left out. */
                session?: string | null;
            };
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The sheet. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/pdf": unknown;
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    readDraft: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DraftOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    saveDraft: {
        parameters: {
            query?: never;
            header?: {
                /** @description ETag that the change was made from. */
                "if-match"?: string | null;
                /** @description The asterisk: only where there is no draft yet; otherwise 412. */
                "if-none-match"?: "*" | null;
            };
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["DraftBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DraftOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            412: components["responses"]["412"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    dropDraft: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    layOutTemplate: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["FromTemplateBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProgramContent-Output"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    decideProgressions: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ProgressionsBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Progressed"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            /** @description A suggestion is not there any more, or a clearance is needed first. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Another version was published meanwhile. */
            412: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    readReadiness: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReadinessOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    signReadiness: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ReadinessNoteBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SignedNote"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            /** @description There is no trip, or go is not possible in this state. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something has changed since what the signer was shown. */
            412: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    exportRecord: {
        parameters: {
            query?: {
                language?: "en" | "de";
            };
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The file. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/zip": unknown;
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    listRefusedEvents: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RefusedEventList"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    retryRefusedEvent: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
                event_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RetryOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    listScreenings: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ScreeningList"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    screenClient: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ScreeningBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ScreeningOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    readSeasonStart: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SeasonStart"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    planSeason: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SeasonBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SeasonOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            413: components["responses"]["413"];
            /** @description It contradicts itself: carries short_by, unit and choices that would help. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            503: components["responses"]["503"];
        };
    };
    layOutSeason: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["LayOutBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProgramContent-Output"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            413: components["responses"]["413"];
            /** @description It contradicts itself: carries short_by, unit and choices that would help. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            503: components["responses"]["503"];
        };
    };
    resumeSeason: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ResumeBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Resumption"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            413: components["responses"]["413"];
            /** @description It contradicts itself: carries short_by, unit and choices that would help. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            503: components["responses"]["503"];
        };
    };
    listSuggestions: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Suggestions"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    readClientTests: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClientTests"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    recordTest: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["TestBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ResultOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    readTimeline: {
        parameters: {
            query?: {
                cursor?: string | null;
                limit?: number;
                /** @description Which comes first */
                order?: "oldest" | "newest";
            };
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Timeline"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    readTrip: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TripOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    saveTrip: {
        parameters: {
            query?: never;
            header?: {
                /** @description ETag that the change was made from; "0": none yet. */
                "if-match"?: string | null;
            };
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["TripBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TripOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            412: components["responses"]["412"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    removeTrip: {
        parameters: {
            query?: never;
            header?: {
                /** @description ETag that the change was made from; "0": none yet. */
                "if-match"?: string | null;
            };
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            412: components["responses"]["412"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    readDemand: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DemandOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    readRoute: {
        parameters: {
            query?: {
                /** @description Else: where days end */
                cut_km?: number[];
                /** @description Cut into days of even moving time */
                days?: number | null;
            };
            header?: never;
            path: {
                client_id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/gpx+xml": string;
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReadingOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    revokeDevice: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                device_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DeviceOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    succeedDevice: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SuccessorOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            503: components["responses"]["503"];
        };
    };
    listDrawings: {
        parameters: {
            query?: never;
            header?: {
                /** @description ETag that the caller holds. */
                "if-none-match"?: string | null;
            };
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    /** @description Changes with the texts. */
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DrawingsOut"];
                };
            };
            /** @description The caller's copy is up to date. */
            304: {
                headers: {
                    /** @description Changes with the texts. */
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["400"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    listExercises: {
        parameters: {
            query?: never;
            header?: {
                /** @description ETag that the caller holds. */
                "if-none-match"?: string | null;
            };
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    /** @description Changes with the texts. */
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ExerciseList"];
                };
            };
            /** @description The caller's copy is up to date. */
            304: {
                headers: {
                    /** @description Changes with the texts. */
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    readExercise: {
        parameters: {
            query?: never;
            header?: {
                /** @description ETag that the caller holds. */
                "if-none-match"?: string | null;
            };
            path: {
                code: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    /** @description Changes with the texts. */
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Exercise"];
                };
            };
            /** @description The caller's copy is up to date. */
            304: {
                headers: {
                    /** @description Changes with the texts. */
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    listAlternatives: {
        parameters: {
            query?: {
                /** @description Kit in the house, commas between; empty: none; not given: any kit */
                kit?: string | null;
                /** @description A region that must not be loaded */
                spare?: components["schemas"]["Region"] | null;
                /** @description What must be trained; none: as the movement */
                trains?: components["schemas"]["Quality"] | null;
                /** @description The prescribed one; none: the easiest */
                variant?: string | null;
            };
            header?: never;
            path: {
                code: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AlternativesOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    drawExercise: {
        parameters: {
            query: {
                /** @description Moving; still, for lists and reduced motion; or a strip for paper. */
                form?: components["schemas"]["Form"];
                /** @description Variant of the ladder. */
                variant: string;
                /** @description Side, front ...; else the first. */
                view?: string | null;
            };
            header?: {
                /** @description ETag that the caller holds. */
                "if-none-match"?: string | null;
            };
            path: {
                code: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    /** @description Changes with the texts. */
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "image/svg+xml": string;
                };
            };
            /** @description The caller's copy is up to date. */
            304: {
                headers: {
                    /** @description Changes with the texts. */
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["400"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    readPoses: {
        parameters: {
            query: {
                /** @description One key pose alone. */
                key?: string | null;
                /** @description A drawn variant of the library. */
                variant: string;
            };
            header?: never;
            path: {
                code: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StartOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    createOwnExercise: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["OwnBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OwnOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            /** @description The name is taken, or there are too many. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    readOwnExercise: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                own_code: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OwnOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    changeOwnExercise: {
        parameters: {
            query?: never;
            header?: {
                /** @description ETag that the change was made from. */
                "if-match"?: string | null;
            };
            path: {
                own_code: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["OwnBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OwnOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            /** @description The name is taken, or there are too many. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            412: components["responses"]["412"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    archiveOwnExercise: {
        parameters: {
            query?: never;
            header?: {
                /** @description ETag that the change was made from. */
                "if-match"?: string | null;
            };
            path: {
                own_code: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["OwnPatch"];
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OwnOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            /** @description The name is taken, or there are too many. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            412: components["responses"]["412"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    previewExercise: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PreviewBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PreviewOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            /** @description Too many previews; with Retry-After. */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            503: components["responses"]["503"];
        };
    };
    listFlags: {
        parameters: {
            query?: {
                client_id?: string | null;
                status?: components["schemas"]["FlagStatus"] | null;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FlagList"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    decideFlag: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                flag_id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["DecisionBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Decided"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    withdrawRating: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                scale_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Withdrawn"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    readHistory: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["History"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            503: components["responses"]["503"];
        };
    };
    listen: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            503: components["responses"]["503"];
        };
    };
    readMe: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Me"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            503: components["responses"]["503"];
        };
    };
    listWaitingPairings: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WaitingPairings"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            503: components["responses"]["503"];
        };
    };
    pairPhone: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PairingBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PairingOut"];
                };
            };
            400: components["responses"]["400"];
            403: components["responses"]["403"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    confirmPairing: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                pairing_id: string;
            };
            cookie?: never;
        };
        requestBody?: {
            content: {
                "application/json": components["schemas"]["ConfirmationBody"] | null;
            };
        };
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DeviceOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    refusePairing: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                pairing_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DeviceOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    inviteColleague: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ColleagueBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ColleagueLink"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    withdrawColleague: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                colleague_invitation_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    listPeople: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["People"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            503: components["responses"]["503"];
        };
    };
    joinPractice: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["JoinBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Me"];
                };
            };
            400: components["responses"]["400"];
            403: components["responses"]["403"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    changeColleague: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                practitioner_id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ColleagueChange"];
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Colleague"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    resetSecondFactor: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                practitioner_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Colleague"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    welcomeBack: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                practitioner_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ColleagueLink"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    changePracticeSecurity: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PracticeSecurity"];
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PracticeSecurity"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    readInstallation: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["InstallationOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            503: components["responses"]["503"];
        };
    };
    readWelcome: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["JoinCodeBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Welcome"];
                };
            };
            400: components["responses"]["400"];
            403: components["responses"]["403"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    changePracticeWords: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PracticeWords"];
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PracticeWords"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    exportOwnRecord: {
        parameters: {
            query?: {
                language?: "en" | "de";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The file. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/zip": unknown;
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    readRetention: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RetentionOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            503: components["responses"]["503"];
        };
    };
    setRetention: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["RetentionBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RetentionOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    listScreeningQuestions: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["QuestionList"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            503: components["responses"]["503"];
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
                "application/json": components["schemas"]["SignInBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Me"];
                };
            };
            400: components["responses"]["400"];
            403: components["responses"]["403"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    challengeSignIn: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: {
            content: {
                "application/json": components["schemas"]["ChallengeBody"] | null;
            };
        };
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PasskeyOptions"];
                };
            };
            400: components["responses"]["400"];
            403: components["responses"]["403"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    signInWithPasskey: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PasskeySignInBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Me"];
                };
            };
            400: components["responses"]["400"];
            403: components["responses"]["403"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
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
            /** @description Successful Response */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["400"];
            403: components["responses"]["403"];
            503: components["responses"]["503"];
        };
    };
    listSources: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Sources"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            503: components["responses"]["503"];
        };
    };
    sync: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SyncBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SyncOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    listTemplates: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TemplateList"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            503: components["responses"]["503"];
        };
    };
    createTemplate: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["TemplateBody"];
            };
        };
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TemplateOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            /** @description Another template has that name. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    deleteTemplate: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                template_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            /** @description It comes with the program. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    updateTemplate: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                template_id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["TemplatePatch"];
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TemplateOut"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            /** @description Another template has that name. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            413: components["responses"]["413"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
        };
    };
    listTests: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TestList"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            503: components["responses"]["503"];
        };
    };
    withdrawTest: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                result_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Withdrawn"];
                };
            };
            400: components["responses"]["400"];
            401: components["responses"]["401"];
            403: components["responses"]["403"];
            404: components["responses"]["404"];
            422: components["responses"]["422"];
            503: components["responses"]["503"];
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
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        [key: string]: string;
                    };
                };
            };
            400: components["responses"]["400"];
            503: components["responses"]["503"];
        };
    };
    readMetrics: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["400"];
            503: components["responses"]["503"];
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
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        [key: string]: string;
                    };
                };
            };
            400: components["responses"]["400"];
            503: components["responses"]["503"];
        };
    };
}
