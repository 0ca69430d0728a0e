// Made by `npm run client` from the OpenAPI document of the service. Do not edit.

export interface paths {
    "/health": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Health_health"];
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
        get: operations["Health_ready"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/session": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Access_myself"];
        put?: never;
        post: operations["Access_signIn"];
        delete: operations["Access_signOut"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/people": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["People_people"];
        put?: never;
        post: operations["People_addPerson"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/people/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        delete: operations["People_disable"];
        options?: never;
        head?: never;
        patch: operations["People_changePerson"];
        trace?: never;
    };
    "/v1/integration-keys": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["People_keys"];
        put?: never;
        post: operations["People_addKey"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/integration-keys/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        delete: operations["People_revoke"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/shop": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Shop_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch: operations["Shop_change"];
        trace?: never;
    };
    "/v1/demo-shop": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["DemoShop_open"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/customers/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Customer_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch: operations["Customer_change"];
        trace?: never;
    };
    "/v1/customers": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Customer_list"];
        put?: never;
        post: operations["Customer_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/sites/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Site_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch: operations["Site_change"];
        trace?: never;
    };
    "/v1/sites": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Site_list"];
        put?: never;
        post: operations["Site_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/blackouts/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Blackout_read"];
        put?: never;
        post?: never;
        delete: operations["Blackout_remove"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/blackouts": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Blackout_list"];
        put?: never;
        post: operations["Blackout_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/machine-classes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["MachineClass_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/machine-classes/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["MachineClass_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/machines/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Machine_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch: operations["Machine_change"];
        trace?: never;
    };
    "/v1/machines": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Machine_list"];
        put?: never;
        post: operations["Machine_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/service-items/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["ServiceItem_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch: operations["ServiceItem_change"];
        trace?: never;
    };
    "/v1/service-items": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["ServiceItem_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/register-imports/check": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["Import_check"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/register-imports": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["RegisterImport_list"];
        put?: never;
        post: operations["Import_import"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/machine-overrides/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["MachineOverride_read"];
        put?: never;
        post?: never;
        delete: operations["MachineOverride_remove"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/machine-overrides": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["MachineOverride_list"];
        put?: never;
        post: operations["MachineOverride_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/component-slots": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["ComponentSlot_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/component-slots/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["ComponentSlot_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/component-lives": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["ComponentLife_list"];
        put?: never;
        post: operations["ComponentLife_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/component-lives/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["ComponentLife_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/register-imports/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["RegisterImport_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/technicians/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Technician_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch: operations["Technician_change"];
        trace?: never;
    };
    "/v1/technicians": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Technician_list"];
        put?: never;
        post: operations["Technician_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/absences/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Absence_read"];
        put?: never;
        post?: never;
        delete: operations["Absence_remove"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/absences": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Absence_list"];
        put?: never;
        post: operations["Absence_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/machine-moves/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["MachineMove_read"];
        put?: never;
        post?: never;
        delete: operations["MachineMove_remove"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/machine-moves": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["MachineMove_list"];
        put?: never;
        post: operations["MachineMove_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/travel-settings/learn": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["Travel_learn"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/weather": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Weather_list"];
        put?: never;
        post: operations["Weather_keep"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/parts/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Part_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch: operations["Part_change"];
        trace?: never;
    };
    "/v1/parts": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Part_list"];
        put?: never;
        post: operations["Part_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/part-orders/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["PartOrder_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch: operations["PartOrder_change"];
        trace?: never;
    };
    "/v1/part-orders": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["PartOrder_list"];
        put?: never;
        post: operations["PartOrder_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/part-orders/{id}/take-back": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["Deliveries_takeBack"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/part-uses/{id}/take-back": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["PartsTakenBack_takeBack"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/agreements/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Agreement_read"];
        put?: never;
        post?: never;
        delete: operations["Agreement_remove"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/agreements": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Agreement_list"];
        put?: never;
        post: operations["Agreement_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/readings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Readings_list"];
        put?: never;
        post: operations["Readings_record"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/readings/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Readings_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/readings/{id}/decision": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["Readings_decide"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/readings/{id}/decisions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Readings_decisions"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/machine-labels": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["MachineLabels_list"];
        put?: never;
        post: operations["MachineLabels_make"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/machine-labels/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["MachineLabels_read"];
        put?: never;
        post?: never;
        delete: operations["MachineLabels_revoke"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/sites/{id}/label-sheet": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["MachineLabels_sheet"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/labels/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Labels_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/labels/{id}/readings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["Labels_record"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/meter-changes/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["MeterChange_read"];
        put?: never;
        post?: never;
        delete: operations["MeterChange_remove"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/meter-changes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["MeterChange_list"];
        put?: never;
        post: operations["MeterChange_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/completions/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Completion_read"];
        put?: never;
        post?: never;
        delete: operations["Completion_remove"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/completions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Completion_list"];
        put?: never;
        post: operations["Completion_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/findings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Finding_list"];
        put?: never;
        post: operations["Finding_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/findings/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Finding_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/stopgaps/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Stopgap_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch: operations["Stopgap_change"];
        trace?: never;
    };
    "/v1/stopgaps": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Stopgap_list"];
        put?: never;
        post: operations["Stopgap_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/follow-ups": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["FollowUp_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/follow-ups/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["FollowUp_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/road-calls/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["RoadCall_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch: operations["RoadCall_change"];
        trace?: never;
    };
    "/v1/road-calls": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["RoadCall_list"];
        put?: never;
        post: operations["RoadCall_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/stopgaps/{id}/renew": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["StopgapDecisions_renew"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/stopgaps/{id}/close": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["StopgapDecisions_close"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/field-day": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["FieldDay_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/week/load-lists.pdf": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Papers_week"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/field-day/load-list.pdf": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Papers_loadList"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/visits/{id}/visit-sheet.pdf": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Papers_visitSheet"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/field-records": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["FieldRecords_list"];
        put?: never;
        post: operations["FieldRecords_record"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/field-records/{id}/decision": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["FieldRecords_decide"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/part-uses": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["PartUse_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/part-uses/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["PartUse_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/work-times": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["WorkTime_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/work-times/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["WorkTime_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/photos": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Photos_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/photos/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put: operations["Photos_keep"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/photos/{id}/image": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Photos_image"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/due": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Due_due"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/due/summary": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Due_summary"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/machines/{id}/usage": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Due_usage"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/forecast-runs": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["Due_askForecast"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/forecast-runs/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Due_forecastRun"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/forecast-quality": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["ForecastQuality_ofShop"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reliability/lives": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Lives_lives"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reliability/life-fit": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Lives_fit"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reliability/parts-on-record": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Lives_parts"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reliability/grade-comparison": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Lives_grades"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reliability/replacement-age": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Lives_replacementAge"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reliability/block-replacement": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Lives_blockReplacement"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reliability/stopgap-risk": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Lives_stopgap"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reliability/bearing-life": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Bearings_bearingLife"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reliability/inspection-interval": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Bearings_inspection"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reliability/speed-checks": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Bearings_checks"];
        put?: never;
        post: operations["Bearings_check"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reliability/machines": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["MachineRecords_machines"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reliability/machines/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["MachineRecords_machine"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reliability/mean-cumulative": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["MachineRecords_cumulative"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reliability/refits": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["Proposals_refit"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reliability/refits/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Proposals_run"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reliability/interval-proposals": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Proposals_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reliability/interval-proposals/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Proposals_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reliability/interval-proposals/{id}/accept": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["Proposals_accept"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reliability/interval-proposals/{id}/refuse": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["Proposals_refuse"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reliability/interval-proposals/{id}/reverse": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["Proposals_reverse"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/failure-causes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["FailureCause_list"];
        put?: never;
        post: operations["FailureCause_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/failure-causes/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["FailureCause_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/plan-runs": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Plans_list"];
        put?: never;
        post: operations["Plans_ask"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/plan-runs/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Plans_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/plan-runs/{id}/cancel": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["Plans_cancel"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/plan-runs/{id}/progress": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Plans_progress"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/plan-runs/{id}/difference": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Plans_difference"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/plan-runs/{id}/snapshot": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Plans_snapshot"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/plan-runs/{id}/plan": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Plans_plan"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/week": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Week_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/week/left-out": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Week_leftOut"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/week/extra-time": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Week_extra"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/week/confirm": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["Week_confirm"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/visits": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Visits_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/visits/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Visits_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch: operations["Visits_change"];
        trace?: never;
    };
    "/v1/visits/{id}/finish": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["Visits_finish"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/visits/{id}/answers": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["VisitAnswers_say"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/visit-answers": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["VisitAnswers_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/visit-answers/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["VisitAnswers_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/visit-answers/{id}/reply": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["VisitAnswers_reply"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/visits/{id}/move-prices": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Moves_prices"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/visits/{id}/move": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["Moves_move"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/week-changes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Moves_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/symptoms": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["RoadCallAnswers_symptoms"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/road-calls/{id}/options": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["RoadCallAnswers_options"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/road-calls/{id}/choose": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["RoadCallAnswers_choose"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/visit-bars/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["VisitBar_read"];
        put?: never;
        post?: never;
        delete: operations["VisitBar_remove"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/visit-bars": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["VisitBar_list"];
        put?: never;
        post: operations["VisitBar_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/site-events/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["SiteEvent_read"];
        put?: never;
        post?: never;
        delete: operations["SiteEvent_remove"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/site-events": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["SiteEvent_list"];
        put?: never;
        post: operations["SiteEvent_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/order-list": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Supplies_orders"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/alerts": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Supplies_alerts"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/charge-settings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["ChargeSettings_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch: operations["ChargeSettings_change"];
        trace?: never;
    };
    "/v1/customers/{id}/charge-settings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["ChargeSettings_readCustomer"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch: operations["ChargeSettings_changeCustomer"];
        trace?: never;
    };
    "/v1/charge-documents": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["ChargeDocuments_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/charge-documents/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["ChargeDocuments_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch: operations["ChargeDocuments_change"];
        trace?: never;
    };
    "/v1/charge-documents/{id}/since": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["ChargeDocuments_since"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/charge-documents/{id}/leave": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["ChargeDocuments_leave"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/charge-documents/{id}/ubl": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["ChargeDocuments_ubl"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/charge-documents/{id}/pdf": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["ChargeDocuments_pdf"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/charge-documents/{id}/issue": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["ChargeDocuments_issue"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/charge-documents/{id}/credit": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["ChargeDocuments_credit"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/charge-documents/{id}/amend": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["ChargeDocuments_amend"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/accounting/changes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Accounting_changes"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/accounting/documents/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Accounting_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/accounting/documents/{id}/ubl": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Accounting_ubl"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/accounting/documents/{id}/pdf": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Accounting_pdf"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/accounting/documents/{id}/acknowledge": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["Accounting_acknowledge"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/accounting/documents/{id}/paid": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["Accounting_paid"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/accounting/documents/{id}/refuse": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["Accounting_refuse"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/accounting/journal": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Accounting_journal"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/accounting/reconcile": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["Accounting_reconcile"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/audit-entries": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Audit_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/webhook-endpoints": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Webhooks_list"];
        put?: never;
        post: operations["Webhooks_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/webhook-endpoints/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Webhooks_read"];
        put?: never;
        post?: never;
        delete: operations["Webhooks_remove"];
        options?: never;
        head?: never;
        patch: operations["Webhooks_change"];
        trace?: never;
    };
    "/v1/webhook-endpoints/{id}/rotate-secret": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["Webhooks_rotate"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/webhook-endpoints/{id}/test": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["Webhooks_test"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/webhook-endpoints/{id}/retry": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["Webhooks_retry"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/webhook-endpoints/{id}/deliveries": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Webhooks_deliveries"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calendar-addresses": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["CalendarAddresses_list"];
        put?: never;
        post: operations["CalendarAddresses_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calendar-addresses/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        delete: operations["CalendarAddresses_revoke"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/calendars/{file}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["CalendarFeed_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/site-contacts/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["SiteContact_read"];
        put?: never;
        post?: never;
        delete: operations["SiteContact_remove"];
        options?: never;
        head?: never;
        patch: operations["SiteContact_change"];
        trace?: never;
    };
    "/v1/site-contacts": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["SiteContact_list"];
        put?: never;
        post: operations["SiteContact_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/notices": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["Notices_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/notices/{id}/retry": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["Notices_retry"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/telematics/snapshots": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["Snapshots_take"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/telematics/units": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["TelematicsUnits_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/telematics/units/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["TelematicsUnits_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/telematics/units/{id}/machine": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put: operations["TelematicsUnits_match"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/telematics/sources": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["TelematicsSources_list"];
        put?: never;
        post: operations["TelematicsSources_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/telematics/sources/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["TelematicsSources_read"];
        put?: never;
        post?: never;
        delete: operations["TelematicsSources_remove"];
        options?: never;
        head?: never;
        patch: operations["TelematicsSources_change"];
        trace?: never;
    };
}
export type webhooks = Record<string, never>;
export interface components {
    schemas: {
        Health: {
            /** @enum {string} */
            status: "up";
        };
        Readiness: {
            ready: boolean;
            database: boolean;
            queue: boolean;
        };
        SignIn: {
            /** Format: email */
            email: string;
            password: string;
        };
        /** @description Send the token as `Authorization: Bearer …`; it is shown only once */
        SignedIn: {
            token: string;
            /** Format: date-time */
            expiresAt: string;
            person: {
                /**
                 * Format: uuid
                 * @description Identifier of a row
                 */
                id: string;
                name: string;
                /** @enum {string} */
                role: "manager" | "technician" | "supervisor";
                shopName: string;
            };
            shop: {
                /**
                 * Format: uuid
                 * @description Identifier of a row
                 */
                id: string;
                timeZone: string;
                currency: string;
                /**
                 * @description us = miles, ft-lb, °F first; metric = km, N·m, °C first
                 * @enum {string}
                 */
                units: "us" | "metric";
                /**
                 * Format: int64
                 * @description Days from the world’s calendar to the shop’s: 0, but in a demo shop
                 */
                clockShiftDays: number;
            };
        };
        Myself: {
            /** @enum {string} */
            kind: "person" | "integration";
            name: string;
            role: ("manager" | "technician" | "supervisor") | null;
            scopes: string[];
            /** @description null = every site of the shop */
            siteIds: string[] | null;
        };
        /** @description One page; `next` is null on the last */
        PersonPage: {
            items: components["schemas"]["Person"][];
            next: string | null;
        };
        Person: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: int64
             * @description Grows with every change; the ETag carries it
             */
            version: number;
            name: string;
            email: string;
            /** @enum {string} */
            role: "manager" | "technician" | "supervisor";
            active: boolean;
            siteIds: string[];
            technicianId: string | null;
        };
        /** @description siteIds: the sites a grounds supervisor looks after; technicianId: whose days the person drives. The e-mail address of somebody who was removed brings that person back, as told here */
        PersonCreate: {
            name: string;
            /** Format: email */
            email: string;
            /** @enum {string} */
            role: "manager" | "technician" | "supervisor";
            /** @description At least 8 characters, 15 or more advised; no composition rules */
            password: string;
            /** @default [] */
            siteIds?: string[];
            /** @default null */
            technicianId?: string | null;
        };
        /** @description A new password ends the sign-ins that the person has */
        PersonChanges: {
            name?: string;
            siteIds?: string[];
            technicianId?: string | null;
            /** @description At least 8 characters, 15 or more advised; no composition rules */
            password?: string;
        };
        /** @description One page; `next` is null on the last */
        IntegrationKeyPage: {
            items: components["schemas"]["IntegrationKey"][];
            next: string | null;
        };
        IntegrationKey: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            name: string;
            prefix: string;
            scopes: ("read" | "readings" | "register" | "accounting" | "telematics")[];
            requestsPerMinute: number | null;
            /** Format: date-time */
            createdAt: string;
            expiresAt: string | null;
            lastUsedAt: string | null;
            revokedAt: string | null;
        };
        IntegrationKeyCreate: {
            name: string;
            scopes: ("read" | "readings" | "register" | "accounting" | "telematics")[];
            /** @default null */
            expiresAt?: string | null;
            /** @default null */
            requestsPerMinute?: number | null;
        };
        /** @description The key is shown only once */
        IntegrationKeyCreated: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            name: string;
            prefix: string;
            scopes: ("read" | "readings" | "register" | "accounting" | "telematics")[];
            requestsPerMinute: number | null;
            /** Format: date-time */
            createdAt: string;
            expiresAt: string | null;
            lastUsedAt: string | null;
            revokedAt: string | null;
            key: string;
        };
        /** @description The shop itself: its clock, money and units, and how far its work has come */
        Shop: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: int64
             * @description Grows with every change; the ETag carries it
             */
            version: number;
            name: string;
            timeZone: string;
            currency: string;
            /**
             * @description us = miles, ft-lb, °F first; metric = km, N·m, °C first
             * @enum {string}
             */
            units: "us" | "metric";
            /**
             * Format: date
             * @description Today by the shop’s clock
             */
            today: string;
            /** @description Streets under the map, as the server is set up; null = outlines alone */
            mapTiles: {
                address: string;
                credit: string;
            } | null;
            /**
             * Format: int64
             * @description Days from the world’s calendar to the shop’s: 0, but in a demo shop
             */
            clockShiftDays: number;
            /** @description Day the newest forecast was reckoned from */
            forecastAsOf: string | null;
            /** @description First day of the week planned last */
            plannedWeekOf: string | null;
            /** @description null for grounds supervisors */
            counts: {
                /** Format: int64 */
                customers: number;
                /** Format: int64 */
                sites: number;
                /** Format: int64 */
                machines: number;
                /** Format: int64 */
                technicians: number;
                /** Format: int64 */
                readingsSetAside: number;
                /** Format: int64 */
                openRoadCalls: number;
                /**
                 * Format: int64
                 * @description Wishes of sites without an answer, and late records of the field
                 */
                toDecide: number;
            } | null;
        };
        ShopChanges: {
            name?: string;
            /** @description IANA time zone, e.g. America/Chicago */
            timeZone?: string;
            currency?: string;
            /**
             * @description us = miles, ft-lb, °F first; metric = km, N·m, °C first
             * @enum {string}
             */
            units?: "us" | "metric";
        };
        CustomerChanges: {
            code?: string;
            name?: string;
            billingEmail?: string | null;
            /** Format: int32 */
            termsDays?: number;
            taxExempt?: boolean;
        };
        Customer: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: int64
             * @description Grows with every change; the ETag carries it
             */
            version: number;
            code: string;
            name: string;
            billingEmail: string | null;
            /** Format: int64 */
            termsDays: number;
            taxExempt: boolean;
        };
        CustomerCreate: {
            code: string;
            name: string;
            /** @default null */
            billingEmail?: string | null;
            /**
             * Format: int32
             * @default 30
             */
            termsDays?: number;
            /** @default false */
            taxExempt?: boolean;
        };
        /** @description One page; `next` is null on the last */
        CustomerPage: {
            items: components["schemas"]["Customer"][];
            next: string | null;
        };
        SiteChanges: {
            code?: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            customerId?: string;
            name?: string;
            latitude?: number;
            longitude?: number;
            /** @description IANA time zone, e.g. America/Chicago */
            timeZone?: string;
            access?: components["schemas"]["WeeklyWindow"][];
            /** Format: int32 */
            setupMinutes?: number;
            /** Format: int32 */
            maxMachinesDown?: number;
            /** @enum {string} */
            downRule?: "one-by-one" | "whole-visit";
            preferredTechnicianId?: string | null;
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            preferenceCents?: number;
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            visitFeeCents?: number;
            gateNotes?: string;
            cautions?: string;
        };
        /** @description A span of a weekday, 1 = Monday … 7 = Sunday (ISO 8601) */
        WeeklyWindow: {
            /** Format: int32 */
            weekday: number;
            from: string;
            to: string;
        };
        Site: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: int64
             * @description Grows with every change; the ETag carries it
             */
            version: number;
            code: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            customerId: string;
            name: string;
            latitude: number;
            longitude: number;
            /** @description IANA time zone, e.g. America/Chicago */
            timeZone: string;
            access: components["schemas"]["WeeklyWindow"][];
            /** Format: int64 */
            setupMinutes: number;
            /** Format: int64 */
            maxMachinesDown: number;
            /** @enum {string} */
            downRule: "one-by-one" | "whole-visit";
            preferredTechnicianId: string | null;
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            preferenceCents: number;
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            visitFeeCents: number;
            gateNotes: string;
            cautions: string;
        };
        SiteCreate: {
            code: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            customerId: string;
            name: string;
            latitude: number;
            longitude: number;
            /** @description IANA time zone, e.g. America/Chicago */
            timeZone: string;
            /** @default [] */
            access?: components["schemas"]["WeeklyWindow"][];
            /**
             * Format: int32
             * @default 10
             */
            setupMinutes?: number;
            /**
             * Format: int32
             * @default 1
             */
            maxMachinesDown?: number;
            /**
             * @default one-by-one
             * @enum {string}
             */
            downRule?: "one-by-one" | "whole-visit";
            /** @default null */
            preferredTechnicianId?: string | null;
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             * @default 0
             */
            preferenceCents?: number;
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             * @default 0
             */
            visitFeeCents?: number;
            /** @default  */
            gateNotes?: string;
            /** @default  */
            cautions?: string;
        };
        /** @description One page; `next` is null on the last */
        SitePage: {
            items: components["schemas"]["Site"][];
            next: string | null;
        };
        BlackoutCreate: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            siteId: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            from: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            to: string;
            /** @default  */
            reason?: string;
        };
        /** @description Days on which nobody may take machines of a site */
        Blackout: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            siteId: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            from: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            to: string;
            reason: string;
        };
        /** @description One page; `next` is null on the last */
        BlackoutPage: {
            items: components["schemas"]["Blackout"][];
            next: string | null;
        };
        /** @description One page; `next` is null on the last */
        MachineClassPage: {
            items: components["schemas"]["MachineClass"][];
            next: string | null;
        };
        MachineClass: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            code: string;
            name: string;
            /** Format: int64 */
            defaultSpindles: number;
            preparations: {
                code: string;
                name: string;
                /** Format: int64 */
                minutes: number;
                parentCode: string | null;
                cautions: string[];
                source: string;
            }[];
        };
        MachineChanges: {
            code?: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            siteId?: string;
            machineClass?: string;
            maker?: string | null;
            model?: string | null;
            serial?: string | null;
            inServiceOn?: string | null;
            /** @description First day out of use: from then on it is neither forecast nor planned, and its history stays; null: in use */
            retiredOn?: string | null;
            /** Format: int32 */
            spindles?: number;
            /** @enum {string} */
            severity?: "light" | "normal" | "severe";
            /** @enum {string} */
            condition?: "working" | "down" | "at-shop";
            meterRolloverHours?: (string & (unknown & unknown)) | null;
            notes?: string;
        };
        Machine: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: int64
             * @description Grows with every change; the ETag carries it
             */
            version: number;
            code: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            siteId: string;
            machineClass: string;
            maker: string | null;
            model: string | null;
            serial: string | null;
            inServiceOn: string | null;
            /** @description First day out of use: from then on it is neither forecast nor planned, and its history stays; null: in use */
            retiredOn: string | null;
            /** Format: int64 */
            spindles: number;
            /** @enum {string} */
            severity: "light" | "normal" | "severe";
            /** @enum {string} */
            condition: "working" | "down" | "at-shop";
            meterRolloverHours: (string & (unknown & unknown)) | null;
            notes: string;
        };
        MachineCreate: {
            code: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            siteId: string;
            machineClass: string;
            /** @default null */
            maker?: string | null;
            /** @default null */
            model?: string | null;
            /** @default null */
            serial?: string | null;
            /** @default null */
            inServiceOn?: string | null;
            /**
             * @description First day out of use: from then on it is neither forecast nor planned, and its history stays; null: in use
             * @default null
             */
            retiredOn?: string | null;
            /**
             * Format: int32
             * @default 3
             */
            spindles?: number;
            /**
             * @default normal
             * @enum {string}
             */
            severity?: "light" | "normal" | "severe";
            /**
             * @default working
             * @enum {string}
             */
            condition?: "working" | "down" | "at-shop";
            /** @default null */
            meterRolloverHours?: (string & (unknown & unknown)) | null;
            /** @default  */
            notes?: string;
        };
        /** @description One page; `next` is null on the last */
        MachinePage: {
            items: components["schemas"]["Machine"][];
            next: string | null;
        };
        ServiceItemChanges: {
            title?: string;
            intervalHours?: (string & (unknown & unknown)) | null;
            intervalDays?: number | null;
            firstHours?: (string & (unknown & unknown)) | null;
            severeFactor?: number;
            toleranceHours?: string;
            /** Format: int32 */
            toleranceDays?: number;
            /** Format: int32 */
            minutes?: number;
            /** Format: int32 */
            minutesPerSpindle?: number;
            skill?: string | null;
            mustDo?: boolean;
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            failureCents?: number;
            active?: boolean;
        };
        /** @description A kind of work on the machines of a class: the shop’s own, editable copy */
        ServiceItem: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: int64
             * @description Grows with every change; the ETag carries it
             */
            version: number;
            machineClass: string;
            code: string;
            title: string;
            /** @enum {string} */
            scope: "machine" | "spindle";
            intervalHours: string | null;
            intervalDays: number | null;
            firstHours: string | null;
            seasonEvent: ("before-first-cut" | "before-storage") | null;
            severeFactor: number;
            toleranceHours: string;
            /** Format: int64 */
            toleranceDays: number;
            /** @enum {string} */
            anchor: "floating" | "fixed";
            /** Format: int64 */
            minutes: number;
            /** Format: int64 */
            minutesPerSpindle: number;
            skill: string | null;
            mustDo: boolean;
            preparations: string[];
            resetBy: string[];
            parts: {
                /**
                 * Format: uuid
                 * @description Identifier of a row
                 */
                partId: string;
                code: string;
                quantity: string;
                perSpindle: boolean;
            }[];
            consumables: {
                name: string;
                quantity: number;
                unit: string;
                perSpindle: boolean;
            }[];
            steps: string[];
            torques: components["schemas"]["Torque"][];
            cautions: string[];
            manualFirst: string;
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            failureCents: number;
            hazardShape: number;
            sources: {
                [key: string]: string;
            };
            active: boolean;
        };
        /** @description Tightening torque, low and high; null = only the machine’s manual can say */
        Torque: {
            what: string;
            ftLb: [
                number,
                number
            ] | null;
            nm: [
                number,
                number
            ] | null;
            note: string;
        };
        /** @description One page; `next` is null on the last */
        ServiceItemPage: {
            items: components["schemas"]["ServiceItem"][];
            next: string | null;
        };
        /** @description The CSV files of a register, each as text under its name */
        RegisterFiles: {
            files: {
                [key: string]: string;
            };
        };
        /** @description What an import would do, or did */
        RegisterPreview: {
            /** Format: int64 */
            faultCount: number;
            /** @description The first of them; with one fault nothing can be imported */
            faults: components["schemas"]["RegisterFault"][];
            /** @description Rows read from each file */
            rows: {
                [key: string]: number;
            };
            /** @description What importing changes; null with faults */
            counts: {
                [key: string]: {
                    /** Format: int64 */
                    added: number;
                    /** Format: int64 */
                    changed: number;
                    /** Format: int64 */
                    unchanged: number;
                };
            } | null;
            readingsSetAside: number | null;
        };
        RegisterFault: {
            file: string;
            /**
             * Format: int64
             * @description 1 = the first line; 0 = the file as a whole
             */
            line: number;
            column: string | null;
            message: string;
            clause: components["schemas"]["Clause"] | null;
        };
        /** @description A sentence as its key and what it speaks of, for wording it in another language: `…Cents` money, `…Date` a local date, `…Minutes` a span of time */
        Clause: {
            key: string;
            values: {
                [key: string]: string | number;
            };
        };
        MachineOverrideCreate: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            itemId: string;
            /** @default false */
            disabled?: boolean;
            /** @default null */
            intervalHours?: (string & (unknown & unknown)) | null;
            /** @default null */
            intervalDays?: number | null;
            /** @default null */
            minutes?: number | null;
            /** @default  */
            note?: string;
        };
        /** @description What one machine does differently from its class */
        MachineOverride: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: int64
             * @description Grows with every change; the ETag carries it
             */
            version: number;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            itemId: string;
            disabled: boolean;
            intervalHours: string | null;
            intervalDays: number | null;
            minutes: number | null;
            note: string;
        };
        /** @description One page; `next` is null on the last */
        MachineOverridePage: {
            items: components["schemas"]["MachineOverride"][];
            next: string | null;
        };
        /** @description One page; `next` is null on the last */
        ComponentSlotPage: {
            items: components["schemas"]["ComponentSlot"][];
            next: string | null;
        };
        /** @description A place for a part, e.g. “spindle 2” */
        ComponentSlot: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            name: string;
            kind: string;
        };
        ComponentLifeCreate: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            slotId: string;
            /** @default null */
            partId?: string | null;
            /** @default null */
            fittedOn?: string | null;
            /** @default null */
            fittedHours?: string | null;
            /** @default null */
            removedOn?: string | null;
            /** @default null */
            removedHours?: string | null;
            /** @default null */
            removalReason?: ("failed" | "preventive" | "upgrade" | "machine-retired") | null;
            /** @default null */
            bearingFeel?: ("smooth" | "rough" | "loose" | "locked") | null;
            /**
             * @description A lip rolled on the spacer’s end
             * @default null
             */
            spacerEndLip?: boolean | null;
            /** @default null */
            housingStepWear?: ("none" | "slight" | "worn") | null;
            /** @default null */
            debrisWrap?: ("none" | "grass" | "twine" | "wire") | null;
            /** @default null */
            debrisCupMissing?: boolean | null;
            /** @default null */
            greaseLook?: ("fresh" | "dark" | "watery" | "metal" | "dry") | null;
            /** @default null */
            rootCause?: string | null;
            /**
             * @description One event behind several failures: /v1/failure-causes
             * @default null
             */
            causeId?: string | null;
            /** @default  */
            note?: string;
        };
        /** @description One part’s stay in a slot: fitted, removed, why */
        ComponentLife: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            slotId: string;
            partId: string | null;
            fittedOn: string | null;
            fittedHours: string | null;
            removedOn: string | null;
            removedHours: string | null;
            removalReason: ("failed" | "preventive" | "upgrade" | "machine-retired") | null;
            bearingFeel: string | null;
            spacerEndLip: boolean | null;
            housingStepWear: string | null;
            debrisWrap: string | null;
            debrisCupMissing: boolean | null;
            greaseLook: string | null;
            rootCause: string | null;
            causeId: string | null;
            note: string;
        };
        /** @description One page; `next` is null on the last */
        ComponentLifePage: {
            items: components["schemas"]["ComponentLife"][];
            next: string | null;
        };
        /** @description One page; `next` is null on the last */
        RegisterImportPage: {
            items: components["schemas"]["RegisterImport"][];
            next: string | null;
        };
        /** @description An import that changed something */
        RegisterImport: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            folderHash: string;
            counts: {
                [key: string]: unknown;
            };
            /** Format: date-time */
            importedAt: string;
        };
        TechnicianChanges: {
            code?: string;
            name?: string;
            baseLatitude?: number;
            baseLongitude?: number;
            /** @description IANA time zone, e.g. America/Chicago */
            timeZone?: string;
            shifts?: components["schemas"]["WeeklyWindow"][];
            skills?: string[];
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            wageCentsPerHour?: number;
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            overtimeCentsPerHour?: number;
            /** Format: int32 */
            maxOvertimeMinutes?: number;
            /** Format: int32 */
            lunchMinutes?: number;
            lunchEarliest?: string;
            lunchLatest?: string;
            active?: boolean;
        };
        Technician: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: int64
             * @description Grows with every change; the ETag carries it
             */
            version: number;
            code: string;
            name: string;
            baseLatitude: number;
            baseLongitude: number;
            timeZone: string;
            shifts: components["schemas"]["WeeklyWindow"][];
            skills: string[];
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            wageCentsPerHour: number;
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            overtimeCentsPerHour: number;
            /** Format: int64 */
            maxOvertimeMinutes: number;
            /** Format: int64 */
            lunchMinutes: number;
            lunchEarliest: string;
            lunchLatest: string;
            active: boolean;
        };
        TechnicianCreate: {
            code: string;
            name: string;
            baseLatitude: number;
            baseLongitude: number;
            /** @description IANA time zone, e.g. America/Chicago */
            timeZone: string;
            /**
             * @description At most two stretches a day; the rest between them is lunch as well
             * @default []
             */
            shifts?: components["schemas"]["WeeklyWindow"][];
            /** @default [] */
            skills?: string[];
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            wageCentsPerHour: number;
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            overtimeCentsPerHour: number;
            /**
             * Format: int32
             * @default 0
             */
            maxOvertimeMinutes?: number;
            /**
             * Format: int32
             * @default 30
             */
            lunchMinutes?: number;
            /** @default 11:00 */
            lunchEarliest?: string;
            /** @default 13:30 */
            lunchLatest?: string;
            /** @default true */
            active?: boolean;
        };
        /** @description One page; `next` is null on the last */
        TechnicianPage: {
            items: components["schemas"]["Technician"][];
            next: string | null;
        };
        AbsenceCreate: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            technicianId: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            from: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            to: string;
            /** @default  */
            reason?: string;
        };
        /** @description Days a technician does not work */
        Absence: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            technicianId: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            from: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            to: string;
            reason: string;
        };
        /** @description One page; `next` is null on the last */
        AbsencePage: {
            items: components["schemas"]["Absence"][];
            next: string | null;
        };
        MachineMoveCreate: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            fromSiteId: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            until: string;
        };
        /** @description A machine left a site; what it ran there says little about the next */
        MachineMove: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            fromSiteId: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            until: string;
        };
        /** @description One page; `next` is null on the last */
        MachineMovePage: {
            items: components["schemas"]["MachineMove"][];
            next: string | null;
        };
        TravelLearn: {
            drives: {
                from: {
                    latitude: number;
                    longitude: number;
                };
                to: {
                    latitude: number;
                    longitude: number;
                };
                minutes: number;
                /** @default null */
                metres?: number | null;
            }[];
            /**
             * @description Plan with what was learned from now on
             * @default false
             */
            apply?: boolean;
        };
        /** @description Travel settings drawn to recorded drives; errors are mean minutes a drive */
        TravelLearned: {
            before: {
                detourShort: number;
                detourMedium: number;
                detourLong: number;
                townKmh: number;
                openKmh: number;
                centsPerKm: number;
            };
            settings: {
                detourShort: number;
                detourMedium: number;
                detourLong: number;
                townKmh: number;
                openKmh: number;
                centsPerKm: number;
            };
            /** Format: int64 */
            used: number;
            errorBefore: number;
            errorAfter: number;
            applied: boolean;
        };
        /** @description One page; `next` is null on the last */
        WeatherDayPage: {
            items: components["schemas"]["WeatherDay"][];
            next: string | null;
        };
        WeatherDay: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            siteId: string | null;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            date: string;
            lowC: number;
            highC: number;
            rainMm: number;
        };
        WeatherCreate: {
            days: {
                /**
                 * @description null = the whole region
                 * @default null
                 */
                siteId?: string | null;
                /**
                 * Format: date
                 * @description Local date, YYYY-MM-DD
                 */
                date: string;
                lowC: number;
                highC: number;
                rainMm: number;
            }[];
        };
        WeatherKept: {
            /** Format: int64 */
            kept: number;
            /** Format: int64 */
            replaced: number;
        };
        PartChanges: {
            code?: string;
            description?: string;
            designation?: string | null;
            unit?: string;
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            unitPriceCents?: number;
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            unitCostCents?: number;
            /** Format: int32 */
            leadDays?: number;
            onHand?: string;
        };
        Part: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: int64
             * @description Grows with every change; the ETag carries it
             */
            version: number;
            code: string;
            description: string;
            designation: string | null;
            unit: string;
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            unitPriceCents: number;
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            unitCostCents: number;
            /** Format: int64 */
            leadDays: number;
            onHand: string;
        };
        PartCreate: {
            code: string;
            description: string;
            /** @default null */
            designation?: string | null;
            /** @default each */
            unit?: string;
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             * @default 0
             */
            unitPriceCents?: number;
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             * @default 0
             */
            unitCostCents?: number;
            /**
             * Format: int32
             * @default 0
             */
            leadDays?: number;
            /** @default 0 */
            onHand?: string;
        };
        /** @description One page; `next` is null on the last */
        PartPage: {
            items: components["schemas"]["Part"][];
            next: string | null;
        };
        PartOrderChanges: {
            /**
             * Format: date
             * @description When what is still to come should be there
             */
            expectedOn?: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            receivedOn?: string;
            /** @description All that has come so far, this delivery included; left out = all that was ordered */
            receivedQuantity?: string & (unknown & unknown);
            /**
             * Format: date
             * @description Nothing more of it comes; what has come stays
             */
            cancelledOn?: string;
        };
        /** @description A part on its way; what is received is put on the shelf, the rest stays on order */
        PartOrder: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: int64
             * @description Grows with every change; the ETag carries it
             */
            version: number;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            partId: string;
            quantity: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            orderedOn: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            expectedOn: string;
            /** @description Day of the last delivery */
            receivedOn: string | null;
            /** @description All that has come so far */
            receivedQuantity: string;
            cancelledOn: string | null;
            /** @description Still to come; none of a cancelled order */
            outstanding: string;
        };
        PartOrderCreate: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            partId: string;
            quantity: string & (unknown & unknown);
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            orderedOn: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            expectedOn: string;
        };
        /** @description One page; `next` is null on the last */
        PartOrderPage: {
            items: components["schemas"]["PartOrder"][];
            next: string | null;
        };
        DeliveryTakenBack: {
            /** @description How many of those received did not come */
            quantity: string & (unknown & unknown);
            reason: string;
            /**
             * @description Also where the shelf no longer holds so many: it is then left with none
             * @default false
             */
            evenIfGone?: boolean;
        };
        /** @description Why a used part that was recorded counts no more */
        PartTakenBack: {
            /** @enum {string} */
            because: "not-used" | "other-part" | "wrong-quantity";
            /** @default  */
            reason?: string;
        };
        /** @description A part that went into a machine */
        PartUse: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            visitId: string | null;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            partId: string | null;
            name: string;
            quantity: string;
            /** Format: date-time */
            usedAt: string;
        };
        AgreementCreate: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            customerId: string;
            name: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            startsOn: string;
            /** @default null */
            endsOn?: string | null;
            /** @default null */
            responseHours?: number | null;
            /** @default [] */
            items?: {
                itemCode: string;
                /** @default true */
                included?: boolean;
                /** @default null */
                yearlyAllowance?: number | null;
            }[];
        };
        /** @description Service agreement with a customer: items included, allowances, response time */
        Agreement: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: int64
             * @description Grows with every change; the ETag carries it
             */
            version: number;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            customerId: string;
            name: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            startsOn: string;
            endsOn: string | null;
            responseHours: number | null;
            items: {
                itemCode: string;
                included: boolean;
                yearlyAllowance: number | null;
            }[];
        };
        /** @description One page; `next` is null on the last */
        AgreementPage: {
            items: components["schemas"]["Agreement"][];
            next: string | null;
        };
        /** @description One page; `next` is null on the last */
        ReadingPage: {
            items: components["schemas"]["Reading"][];
            next: string | null;
        };
        Reading: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: int64
             * @description Grows with every change; the ETag carries it
             */
            version: number;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            /** Format: date-time */
            readAt: string;
            hours: string;
            /** @enum {string} */
            source: "technician" | "supervisor" | "telematics" | "manager" | "label";
            /** @enum {string} */
            status: "accepted" | "set-aside";
            reasonCode: string | null;
            reason: string | null;
            suggestedHours: string | null;
            decidedAt: string | null;
        };
        /** @description One or many readings; a reading that is there already is not added again */
        ReadingsCreate: {
            readings: components["schemas"]["ReadingCreate"][];
        };
        ReadingCreate: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            /** Format: date-time */
            readAt: string;
            hours: string;
            /** @enum {string} */
            source?: "technician" | "supervisor" | "telematics" | "manager" | "label";
        };
        /** @description What became of each reading: doubtful ones are set aside with their reason, never dropped */
        ReadingsTaken: {
            /** Format: int64 */
            added: number;
            /** Format: int64 */
            repeated: number;
            readings: components["schemas"]["Reading"][];
        };
        ReadingDecision: {
            /** @enum {string} */
            decision: "accept" | "set-aside" | "correct";
            hours?: string;
            reason?: string;
        };
        /** @description One page; `next` is null on the last */
        ReadingDecisionMadePage: {
            items: components["schemas"]["ReadingDecisionMade"][];
            next: string | null;
        };
        /** @description One decision of a person about a reading; never changed */
        ReadingDecisionMade: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            readingId: string;
            /** @enum {string} */
            decision: "accept" | "set-aside" | "correct";
            hoursBefore: string;
            /** @description Hours believed since; null when it was set aside */
            hoursAfter: string | null;
            /** @enum {string} */
            statusBefore: "accepted" | "set-aside";
            codeBefore: string | null;
            /** @description Why it had been set aside */
            reasonBefore: string | null;
            reason: string | null;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            decidedBy: string;
            decidedByName: string;
            /** Format: date-time */
            decidedAt: string;
        };
        /** @description One page; `next` is null on the last */
        MachineLabelPage: {
            items: components["schemas"]["MachineLabel"][];
            next: string | null;
        };
        /** @description Whoever scans it may enter hours of its machine until it is revoked */
        MachineLabel: {
            /** @description Identifier of a label: 26 characters of Crockford base32 */
            id: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            machineCode: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            siteId: string;
            /** Format: date-time */
            madeAt: string;
            revokedAt: string | null;
        };
        /** @description One machine, or every machine of a site */
        MachineLabelCreate: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId?: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            siteId?: string;
        };
        /** @description The labels that count now; `made` of them are new */
        MachineLabels: {
            /** Format: int64 */
            made: number;
            items: components["schemas"]["MachineLabel"][];
        };
        /** @description All that a label tells */
        LabelledMachine: {
            machineCode: string;
            machineName: string;
            lastReading: {
                /** Format: date-time */
                readAt: string;
                hours: string;
            } | null;
        };
        /** @description What the hour meter shows */
        LabelReadingCreate: {
            /** Format: date-time */
            readAt: string;
            hours: string;
        };
        /** @description Kept; a doubtful one is looked at by the shop first */
        LabelReadingTaken: {
            /** Format: date-time */
            readAt: string;
            hours: string;
            /** @enum {string} */
            status: "accepted" | "set-aside";
        };
        MeterChangeCreate: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            changedOn: string;
            /** @description What the old meter showed last */
            oldHours: string;
            /**
             * @description What the new meter showed first
             * @default 0
             */
            newHours?: string;
        };
        /** @description A new hour meter; lifetime hours run across it. A found one is a proposal until somebody tells it */
        MeterChange: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            changedOn: string;
            oldHours: string;
            newHours: string;
            /**
             * @description told by a person, or found in the readings and proposed
             * @enum {string}
             */
            origin: "told" | "found";
            sentence: string;
        };
        /** @description One page; `next` is null on the last */
        MeterChangePage: {
            items: components["schemas"]["MeterChange"][];
            next: string | null;
        };
        CompletionCreate: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            itemCode: string;
            /** @default null */
            slot?: string | null;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            doneOn: string;
            /** @default null */
            meterHours?: string | null;
            /**
             * @default done
             * @enum {string}
             */
            outcome?: "done" | "failed";
            /** @default null */
            partId?: string | null;
            /** @default null */
            visitId?: string | null;
            /** @default  */
            note?: string;
        };
        /** @description A service item that was done; starts its next interval */
        Completion: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            itemCode: string;
            slot: string | null;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            doneOn: string;
            meterHours: string | null;
            /** @enum {string} */
            outcome: "done" | "failed";
            partId: string | null;
            visitId: string | null;
            note: string;
        };
        /** @description One page; `next` is null on the last */
        CompletionPage: {
            items: components["schemas"]["Completion"][];
            next: string | null;
        };
        FindingCreate: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            itemCode: string;
            /** @default null */
            slot?: string | null;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            foundOn: string;
            observation: string;
            /** @default {} */
            measures?: {
                [key: string]: number | string;
            };
            /** @default null */
            intervalFactor?: number | null;
            /** @default null */
            dueWithinHours?: string | null;
            /** @default null */
            dueWithinDays?: number | null;
            /** @default null */
            visitId?: string | null;
            /**
             * @description What is owed because of it; opens a follow-up
             * @default null
             */
            followUp?: string | null;
        };
        /** @description What was seen or measured */
        Finding: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            itemCode: string;
            slot: string | null;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            foundOn: string;
            observation: string;
            measures: {
                [key: string]: number | string;
            };
            intervalFactor: number | null;
            dueWithinHours: string | null;
            dueWithinDays: number | null;
            visitId: string | null;
        };
        /** @description One page; `next` is null on the last */
        FindingPage: {
            items: components["schemas"]["Finding"][];
            next: string | null;
        };
        StopgapChanges: {
            partExpectedOn?: string | null;
        };
        /** @description A temporary repair under its own limit; the work it owes comes back as a visit item that must be done */
        Stopgap: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: int64
             * @description Grows with every change; the ETag carries it
             */
            version: number;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            code: string;
            description: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            madeOn: string;
            limitHours: string | null;
            limitOn: string | null;
            partId: string | null;
            partQuantity: string;
            partExpectedOn: string | null;
            /** Format: int64 */
            minutes: number;
            skill: string | null;
            preparations: string[];
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            failureCents: number;
            /** @description Its hours count from this day; null = from `madeOn` */
            renewedOn: string | null;
            closedOn: string | null;
        };
        StopgapCreate: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            /** @default make-good */
            code?: string;
            description: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            madeOn: string;
            /** @default null */
            limitHours?: (string & (unknown & unknown)) | null;
            /** @default null */
            limitOn?: string | null;
            /** @default null */
            partId?: string | null;
            /** @default 1 */
            partQuantity?: string;
            /** @default null */
            partExpectedOn?: string | null;
            /** Format: int32 */
            minutes: number;
            /** @default null */
            skill?: string | null;
            /** @default [] */
            preparations?: string[];
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             * @default 50000
             */
            failureCents?: number;
            /** @default null */
            visitId?: string | null;
        };
        /** @description One page; `next` is null on the last */
        StopgapPage: {
            items: components["schemas"]["Stopgap"][];
            next: string | null;
        };
        /** @description One page; `next` is null on the last */
        FollowUpPage: {
            items: components["schemas"]["FollowUp"][];
            next: string | null;
        };
        /** @description The return that a stopgap or a finding owes */
        FollowUp: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: int64
             * @description Grows with every change; the ETag carries it
             */
            version: number;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            stopgapId: string | null;
            findingId: string | null;
            owed: string;
            dueOn: string | null;
            visitId: string | null;
            closedOn: string | null;
        };
        RoadCallChanges: {
            /** @enum {string} */
            state?: "open" | "planned" | "closed";
            visitId?: string | null;
            /** Format: int32 */
            minutes?: number;
            skill?: string | null;
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            downCentsPerDay?: number;
        };
        RoadCall: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: int64
             * @description Grows with every change; the ETag carries it
             */
            version: number;
            symptomCode: string | null;
            answers: {
                [key: string]: string;
            };
            /** Format: int64 */
            minutes: number;
            skill: string | null;
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            downCentsPerDay: number;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            /** Format: date-time */
            calledAt: string;
            symptom: string;
            whenItHappens: string;
            tried: string;
            usable: boolean;
            /** @enum {string} */
            state: "open" | "planned" | "closed";
            visitId: string | null;
        };
        RoadCallCreate: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            /**
             * Format: date-time
             * @description Left out = now, by the service’s clock; no more than five minutes ahead of it, as clocks differ
             */
            calledAt?: string;
            symptom: string;
            /** @default  */
            whenItHappens?: string;
            /** @default  */
            tried?: string;
            /** @default false */
            usable?: boolean;
            /** @description One of GET /v1/symptoms */
            symptomCode?: string;
            /**
             * @description Answers to the symptom’s questions, by code
             * @default {}
             */
            answers?: {
                [key: string]: string;
            };
            /**
             * Format: int32
             * @description On site; left out = what the symptom takes
             */
            minutes?: number;
            skill?: string | null;
            /**
             * Format: int32
             * @description What a day of waiting costs the customer; left out = the starting value
             */
            downCentsPerDay?: number;
        };
        /** @description One page; `next` is null on the last */
        RoadCallPage: {
            items: components["schemas"]["RoadCall"][];
            next: string | null;
        };
        /** @description A new limit in place of the one it has */
        StopgapRenewal: {
            /**
             * @description Good for so many hours from today on
             * @default null
             */
            limitHours?: (string & (unknown & unknown)) | null;
            /** @default null */
            limitOn?: string | null;
            reason: string;
        };
        /** @description The return that it owes is owed no more */
        StopgapClose: {
            /** @enum {string} */
            because: "done-otherwise" | "not-needed";
            reason: string;
            /**
             * Format: date
             * @description Left out = today
             */
            closedOn?: string;
        };
        /** @description A technician’s day whole, to be read ahead and used without a network */
        FieldDay: {
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            date: string;
            /** @description Every planned day of this technician from a week ago on */
            dates: string[];
            technician: {
                /**
                 * Format: uuid
                 * @description Identifier of a row
                 */
                id: string;
                name: string;
            };
            shop: {
                name: string;
                timeZone: string;
                currency: string;
                /** @enum {string} */
                units: "us" | "metric";
            };
            route: {
                /**
                 * Format: uuid
                 * @description Identifier of a row
                 */
                technicianId: string;
                technicianName: string;
                /**
                 * Format: date
                 * @description Local date, YYYY-MM-DD
                 */
                date: string;
                /** Format: date-time */
                leaveAt: string;
                /** Format: date-time */
                returnAt: string;
                lunchFrom: string | null;
                lunchTo: string | null;
                /** Format: int64 */
                driveMinutes: number;
                /** Format: int64 */
                driveMetres: number;
                /** Format: int64 */
                workMinutes: number;
                /** Format: int64 */
                waitMinutes: number;
                /** Format: int64 */
                overtimeMinutes: number;
                load: {
                    partId: string | null;
                    name: string;
                    quantity: number;
                    unit: string;
                    missing: number;
                }[];
            } | null;
            manualFirst: string;
            parts: {
                /**
                 * Format: uuid
                 * @description Identifier of a row
                 */
                id: string;
                code: string;
                description: string;
                unit: string;
            }[];
            visits: {
                /**
                 * Format: uuid
                 * @description Identifier of a row
                 */
                id: string;
                /**
                 * Format: int64
                 * @description Grows with every change; the ETag carries it
                 */
                version: number;
                /**
                 * Format: uuid
                 * @description Identifier of a row
                 */
                siteId: string;
                /**
                 * Format: uuid
                 * @description Identifier of a row
                 */
                technicianId: string;
                /**
                 * Format: date
                 * @description Local date, YYYY-MM-DD
                 */
                date: string;
                /** @enum {string} */
                state: "proposed" | "confirmed" | "done" | "cancelled";
                /** Format: int64 */
                driveMinutes: number;
                /** Format: date-time */
                arriveAt: string;
                /** Format: date-time */
                startAt: string;
                /** Format: date-time */
                endAt: string;
                /** Format: int64 */
                setupMinutes: number;
                /** Format: int64 */
                preparationMinutes: number;
                promisedFrom: string | null;
                promisedTo: string | null;
                /** @description Held fast by the shop: planning again leaves it as it is */
                pinned: boolean;
                finishedAt: string | null;
                /** @description What the site said of it last */
                answer: components["schemas"]["VisitAnswer"] | null;
                site: {
                    name: string;
                    latitude: number;
                    longitude: number;
                    timeZone: string;
                    gateNotes: string;
                    cautions: string;
                };
                machines: {
                    /**
                     * Format: uuid
                     * @description Identifier of a row
                     */
                    id: string;
                    code: string;
                    machineClass: string;
                    maker: string | null;
                    model: string | null;
                    serial: string | null;
                    /** Format: int64 */
                    spindles: number;
                    /** @enum {string} */
                    condition: "working" | "down" | "at-shop";
                    notes: string;
                    lastReading: {
                        /** Format: date-time */
                        readAt: string;
                        hours: string;
                    } | null;
                    hoursPerWeek: number | null;
                    /** @description To be seen before the first step, each once */
                    cautions: string[];
                    stopgaps: {
                        description: string;
                        limitHours: string | null;
                        /**
                         * Format: date
                         * @description Its hours count from here: it was made that day, or renewed
                         */
                        countedFrom: string;
                        limitOn: string | null;
                    }[];
                    itemCodes: {
                        code: string;
                        title: string;
                        /** @enum {string} */
                        scope: "machine" | "spindle";
                    }[];
                    items: {
                        /**
                         * Format: uuid
                         * @description Identifier of a row
                         */
                        id: string;
                        /**
                         * Format: uuid
                         * @description Identifier of a row
                         */
                        machineId: string;
                        code: string;
                        slot: string | null;
                        title: string;
                        /** @enum {string} */
                        role: "must-do" | "anchor" | "rider" | "found";
                        /** Format: int64 */
                        minutes: number;
                        /** Format: int64 */
                        sharedMinutes: number;
                        /** @enum {string} */
                        state: "planned" | "done" | "skipped";
                        /** @description Its machine stands at another site by now: this visit does not reach it, until the week is planned again */
                        isElsewhere: boolean;
                        steps: string[];
                        torques: components["schemas"]["Torque"][];
                        cautions: string[];
                        parts: {
                            partId: string | null;
                            name: string;
                            quantity: number;
                            unit: string;
                        }[];
                        /** @description The stopgap that it makes good */
                        stopgapId: string | null;
                        /** @description The call that it answers */
                        roadCallId: string | null;
                    }[];
                }[];
            }[];
        };
        /** @description What a site says of a planned visit */
        VisitAnswer: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: int64
             * @description Grows with every change; the ETag carries it
             */
            version: number;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            siteId: string;
            /** @description null = planning again has dropped the visit */
            visitId: string | null;
            /** @enum {string} */
            kind: "suits" | "move";
            /**
             * Format: date-time
             * @description Start of the visit when this was said
             */
            aboutStart: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            aboutDate: string;
            reason: string;
            /** @description Days that would suit */
            days: string[];
            /** Format: date-time */
            saidAt: string;
            /**
             * @description made = the visit was made and the wish never answered; given-up = so was the visit
             * @enum {string}
             */
            state: "noted" | "open" | "met" | "declined" | "withdrawn" | "made" | "given-up";
            /** @description What the shop says to it */
            reply: string;
            repliedAt: string | null;
        };
        /** @description One page; `next` is null on the last */
        FieldRecordPage: {
            items: components["schemas"]["FieldRecord"][];
            next: string | null;
        };
        /** @description A fact recorded in the field; a late one waits for the shop’s decision */
        FieldRecord: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: int64
             * @description Grows with every change; the ETag carries it
             */
            version: number;
            kind: string;
            visitId: string | null;
            machineId: string | null;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            recordedBy: string;
            recordedByName: string;
            /** Format: date-time */
            deviceAt: string;
            /** Format: date-time */
            receivedAt: string;
            /**
             * Format: int64
             * @description More than 300 either way: the device’s clock was wrong and is corrected
             */
            skewSeconds: number;
            fact: {
                [key: string]: unknown;
            };
            /** @enum {string} */
            state: "applied" | "review" | "accepted" | "dismissed";
            /** @description Why it waits for somebody to look at it */
            reviewReason: string | null;
            decidedAt: string | null;
        };
        FieldRecordCreate: {
            /**
             * Format: uuid
             * @description Made by the device: sent again, it is recorded once
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened, by the device’s clock
             */
            deviceAt: string;
            /**
             * Format: date-time
             * @description The device’s clock when it was sent: shows how far that clock is off
             */
            sentAt: string;
            /** @default null */
            visitId?: string | null;
            /** @default null */
            machineId?: string | null;
            fact: {
                /** @enum {string} */
                kind: "cautions-seen";
                cautions: string[];
            } | {
                /** @enum {string} */
                kind: "reading";
                hours: string;
            } | {
                /** @enum {string} */
                kind: "item-done";
                /**
                 * Format: uuid
                 * @description Of the visit as it was read; found again by what it is for, or by code and slot, when it was replaced
                 */
                itemId: string;
                code: string;
                /** @default null */
                slot?: string | null;
                /** @description The stopgap that it made good */
                stopgapId?: string | null;
                /** @description The call that it answered */
                roadCallId?: string | null;
                /** @default null */
                meterHours?: string | null;
                /** @default  */
                note?: string;
            } | {
                /** @enum {string} */
                kind: "finding";
                itemCode: string;
                /** @default null */
                slot?: string | null;
                observation: string;
                /** @default {} */
                measures?: {
                    [key: string]: number | string;
                };
                /** @default null */
                followUp?: string | null;
            } | {
                /** @enum {string} */
                kind: "part-used";
                /** @default null */
                partId?: string | null;
                name: string;
                quantity: string & (unknown & unknown);
            } | {
                /** @enum {string} */
                kind: "part-taken-back";
                /**
                 * Format: uuid
                 * @description The record of the used part
                 */
                useId: string;
                /** @description As it was recorded, for whoever decides about a late record */
                name: string;
                quantity: string & (unknown & unknown);
                /** @enum {string} */
                because: "not-used" | "other-part" | "wrong-quantity";
            } | {
                /** @enum {string} */
                kind: "work-time";
                /** Format: date-time */
                startedAt: string;
                /** Format: date-time */
                endedAt: string;
            } | {
                /** @enum {string} */
                kind: "found-work";
                title: string;
                /** @default null */
                itemCode?: string | null;
                /**
                 * @description Which of several places; null = all
                 * @default null
                 */
                slot?: string | null;
                /** Format: int32 */
                minutes: number;
                /** @description false = owed: a service item falls due soon, anything else waits as a call */
                done: boolean;
            } | {
                /** @enum {string} */
                kind: "stopgap";
                description: string;
                /** @default null */
                limitHours?: (string & (unknown & unknown)) | null;
                /** @default null */
                limitOn?: string | null;
                /** @default null */
                partId?: string | null;
                /** @default null */
                partExpectedOn?: string | null;
                /** Format: int32 */
                minutes: number;
            } | {
                /** @enum {string} */
                kind: "visit-finish";
                signedBy: string;
            };
        };
        FieldRecordDecision: {
            /** @enum {string} */
            decision: "accept" | "dismiss";
        };
        /** @description One page; `next` is null on the last */
        PartUsePage: {
            items: components["schemas"]["PartUse"][];
            next: string | null;
        };
        /** @description One page; `next` is null on the last */
        WorkTimePage: {
            items: components["schemas"]["WorkTime"][];
            next: string | null;
        };
        /** @description Time at work, from start to stop */
        WorkTime: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            visitId: string | null;
            technicianId: string | null;
            /** Format: date-time */
            startedAt: string;
            /** Format: date-time */
            endedAt: string;
        };
        /** @description One page; `next` is null on the last */
        PhotoPage: {
            items: components["schemas"]["Photo"][];
            next: string | null;
        };
        /** @description A photo of a machine; its bytes are at /v1/photos/{id}/image */
        Photo: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            visitId: string | null;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            roadCallId: string | null;
            /** Format: date-time */
            takenAt: string;
            /** Format: date-time */
            receivedAt: string;
            contentType: string;
            /** Format: int64 */
            sizeBytes: number;
            sha256: string;
        };
        /** @description One page; `next` is null on the last */
        DueItemPage: {
            items: components["schemas"]["DueItem"][];
            next: string | null;
        };
        /** @description When a service item falls due, how sure that is, what waiting costs, and why */
        DueItem: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            machineCode: string;
            machineClass: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            siteId: string;
            siteName: string;
            /** @enum {string} */
            kind: "service" | "stopgap";
            code: string;
            slot: string | null;
            title: string;
            p10: string | null;
            p50: string | null;
            p90: string | null;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            costFrom: string;
            probabilityOverdue: number[];
            timingCostCents: number[] | null;
            /** @description null for grounds supervisors */
            deferralCents: number | null;
            sentence: string;
            /** @description What the date was reckoned from, for those who work in the shop; null for all others */
            why: {
                [key: string]: unknown;
            } | null;
        };
        /** @description How much falls due, in all and at each site, and what leaving it costs */
        DueSummary: {
            /** Format: int64 */
            items: number;
            /** Format: int64 */
            machines: number;
            /**
             * Format: int64
             * @description Past their tolerance today with a chance of one half or more
             */
            overdue: number;
            /** @description null for grounds supervisors */
            deferralCents: number | null;
            sites: {
                /**
                 * Format: uuid
                 * @description Identifier of a row
                 */
                siteId: string;
                /** Format: int64 */
                items: number;
                /** @description null for grounds supervisors */
                deferralCents: number | null;
            }[];
        };
        /** @description Lifetime hours on each day after `asOf`, as quantiles */
        UsageForecast: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            asOf: string;
            lifetimeHoursNow: number;
            hoursPerWeek: number;
            p10: number[];
            p25: number[];
            p50: number[];
            p75: number[];
            p90: number[];
        };
        ForecastRunCreate: {
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            asOf?: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            costFrom?: string;
            /**
             * Format: int32
             * @default 14
             */
            costDays?: number;
        };
        ForecastRun: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /** @enum {string} */
            status: "asked" | "running" | "done" | "failed" | "cancelled";
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            asOf: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            costFrom: string;
            /** Format: int64 */
            costDays: number;
            /** Format: date-time */
            askedAt: string;
            startedAt: string | null;
            finishedAt: string | null;
            machines: number | null;
            items: number | null;
            error: string | null;
        };
        /** @description How good past forecasts were: at dates gone by, forecast from what was known then and held against later readings */
        ForecastQuality: {
            asOf: string | null;
            /** Format: date-time */
            computedAt: string;
            sentence: string;
            rows: components["schemas"]["ForecastQualityRow"][];
        };
        ForecastQualityRow: {
            /** Format: int64 */
            daysAhead: number;
            /**
             * Format: int64
             * @description Past forecasts that later readings have judged; 0 leaves the rest null
             */
            judged: number;
            /** @description Share of outcomes inside the 50 % range */
            coverage50: number | null;
            coverage80: number | null;
            coverage95: number | null;
            /** @description Mean pinball loss, hours */
            pinballHours: number | null;
            /** @description Mean pinball loss, hours */
            lastTwoReadingsHours: number | null;
            /** @description Mean pinball loss, hours */
            wholeLifeHours: number | null;
            /** @description Mean pinball loss, hours */
            lastYearHours: number | null;
            /** @description Share by which our loss is below that of the best of the three rules of thumb */
            belowBestRule: number | null;
            /** @description Mean of outcome minus middle forecast, hours */
            biasHours: number | null;
            sentence: string;
        };
        /** @description One page; `next` is null on the last */
        PartLifePage: {
            items: components["schemas"]["PartLife"][];
            next: string | null;
        };
        /** @description One part’s stay in a slot, from the shop’s history */
        PartLife: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            itemCode: string;
            slot: string | null;
            /** @description Part code; null = not on record */
            part: string | null;
            fittedOn: string | null;
            removedOn: string | null;
            /** @description null = still running */
            reason: ("failed" | "preventive" | "upgrade" | "machine-retired") | null;
            /** @description Hours of the part when watching began */
            entryHours: number;
            /** @description Hours of the part at its end, or today */
            ageHours: number;
            fittingKnown: boolean;
            findings: {
                bearingFeel: ("smooth" | "rough" | "loose" | "locked") | null;
                spacerEndLip: boolean | null;
                housingStepWear: ("none" | "slight" | "worn") | null;
                debrisWrap: ("none" | "grass" | "twine" | "wire") | null;
                debrisCupMissing: boolean | null;
                greaseLook: ("fresh" | "dark" | "watery" | "metal" | "dry") | null;
            };
            rootCause: string | null;
            causeId: string | null;
            /** @description false for all but one of the failures that share a cause */
            countsAsFailure: boolean;
        };
        /** @description How long the parts of a group last: points, fitted curve, figures, assumptions */
        LifeFit: {
            /** Format: int64 */
            lives: number;
            /** Format: int64 */
            failures: number;
            /**
             * @description own lives; pooled with like groups; or the stated assumption alone
             * @enum {string}
             */
            basis: "own" | "pooled" | "prior";
            /** @description With its 90 % interval; null = the data cannot tell */
            shape: {
                value: number;
                low: number;
                high: number;
            } | null;
            /** @description With its 90 % interval; null = the data cannot tell */
            scaleHours: {
                value: number;
                low: number;
                high: number;
            } | null;
            /** @description With its 90 % interval; null = the data cannot tell */
            b10Hours: {
                value: number;
                low: number;
                high: number;
            } | null;
            /** @description Kaplan–Meier steps with 90 % intervals */
            points: {
                /** @description Hours */
                ageHours: number;
                atRisk: number;
                failures: number;
                survival: number;
                low: number;
                high: number;
            }[];
            marks: {
                /** @description Hours */
                ageHours: number;
                failed: boolean;
            }[];
            curve: {
                /** @description Hours */
                ageHours: number;
                survival: number;
                low: number;
                high: number;
            }[];
            goodness: string | null;
            statement: string;
            assumptions: string[];
            leftOut: string[];
        };
        /** @description Parts known to have been fitted by a service item */
        PartsOnRecord: {
            itemCode: string;
            /** @description Part codes */
            parts: string[];
        };
        /** @description Which of two part grades lasts longer here, or that the data cannot tell */
        GradeComparison: {
            grades: string[];
            descriptions: string[];
            lives: number[];
            failures: number[];
            /** @description Life of the first as a multiple of the second’s */
            ratio: number | null;
            interval: {
                low: number;
                high: number | null;
            } | null;
            level: number;
            logRankP: number | null;
            /** @enum {string} */
            verdict: "first-lasts-longer" | "second-lasts-longer" | "cannot-tell";
            sentence: string;
            assumptions: string[];
            points: {
                /** @description Hours */
                ageHours: number;
                atRisk: number;
                failures: number;
                survival: number;
                low: number;
                high: number;
            }[][];
            marks: {
                /** @description Hours */
                ageHours: number;
                failed: boolean;
            }[][];
            /** @description Greatest age watched of each; nothing is known beyond it */
            watchedToHours: number[];
        };
        /** @description When replacing beats waiting: cost-rate curve, optimum with interval */
        ReplacementAge: {
            itemCode: string;
            machineClass: string;
            /**
             * @description own lives; pooled with like groups; or the stated assumption alone
             * @enum {string}
             */
            basis: "own" | "pooled" | "prior";
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            plannedCents: number;
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            failedCents: number;
            /** @description null = waiting for failure is cheapest */
            bestHours: number | null;
            lowHours: number | null;
            /** @description null = it may be best never to replace before failure */
            highHours: number | null;
            centsPerThousandHours: number;
            runToFailureCentsPerThousandHours: number;
            chancePlannedPays: number;
            currentHours: number | null;
            currentCentsPerThousandHours: number | null;
            /** @description What the current interval costs against the best */
            currentExcessCentsPerThousandHours: number | null;
            /** @description Replace parts older than this while the machine is open anyway */
            opportunityHours: number | null;
            curve: {
                ageHours: number;
                centsPerThousandHours: number;
                low: number;
                high: number;
            }[];
            sentence: string;
            statement: string;
            assumptions: string[];
        };
        /** @description Replacing all at a fixed beat of hours, with minimal repairs in between */
        BlockReplacement: {
            itemCode: string;
            machineClass: string;
            /**
             * @description own lives; pooled with like groups; or the stated assumption alone
             * @enum {string}
             */
            basis: "own" | "pooled" | "prior";
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            plannedCents: number;
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            minimalRepairCents: number;
            /** @description null = repairs do not grow with age: never on a fixed beat */
            bestHours: number | null;
            centsPerThousandHours: number | null;
            /** @description Mean minimal repairs between two replacements */
            repairsBetween: number | null;
            curve: {
                intervalHours: number;
                centsPerThousandHours: number;
            }[];
            sentence: string;
            statement: string;
            assumptions: string[];
        };
        /** @description Chance that a temporary repair fails within some hours */
        StopgapRisk: {
            low: number;
            chance: number;
            high: number;
            sentence: string;
            statement: string;
        };
        /** @description ISO 281 rating life of a spindle’s two bearings, contamination as a range */
        BearingLife: {
            designation: string;
            boreMm: number;
            outerMm: number;
            widthMm: number;
            ratingN: number;
            staticRatingN: number;
            seal: string;
            spindleRpm: number;
            beltN: number;
            imbalanceN: number;
            upper: {
                radialN: number;
                equivalentN: number;
                l10Hours: number;
                hoursAtReliability: number;
                adjustedLowHours: number;
                adjustedHighHours: number;
                notes: string[];
            };
            lower: {
                radialN: number;
                equivalentN: number;
                l10Hours: number;
                hoursAtReliability: number;
                adjustedLowHours: number;
                adjustedHighHours: number;
                notes: string[];
            };
            /** @description First failure of either */
            bothL10Hours: number;
            bothAdjustedLowHours: number;
            bothAdjustedHighHours: number;
            contaminationWords: string;
            sources: string[];
        };
        /** @description How often to look, by the delay-time model */
        InspectionInterval: {
            /** @description null = inspecting never pays */
            bestHours: number | null;
            centsPerThousandHours: number;
            withoutInspectionCentsPerThousandHours: number;
            /** @description Share of defects that still fail before an inspection sees them */
            shareFailing: number | null;
            curve: {
                intervalHours: number;
                centsPerThousandHours: number;
            }[];
            sentence: string;
            assumptions: string[];
        };
        SpeedCheckCreate: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            /** @description Tip to tip */
            bladeInches: number;
            engineRpm: number;
            /** @default 1 */
            drivePulley?: number;
            /** @default 1 */
            drivenPulley?: number;
            /** @default  */
            note?: string;
        };
        /** @description A blade tip speed held against its limit */
        SpeedCheck: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            /** Format: date-time */
            checkedAt: string;
            bladeInches: number;
            spindleRpm: number;
            feetPerMinute: number;
            limitFeetPerMinute: number;
            isOver: boolean;
            highestRpm: number;
            /** @description Recorded; blocks nothing */
            warning: string | null;
            limitSource: string;
            note: string;
        };
        /** @description One page; `next` is null on the last */
        SpeedCheckPage: {
            items: components["schemas"]["SpeedCheck"][];
            next: string | null;
        };
        /** @description One page; `next` is null on the last */
        MachineRecordPage: {
            items: components["schemas"]["MachineRecord"][];
            next: string | null;
        };
        /** @description A machine’s unplanned repairs since it was taken on; the dearest per hour first */
        MachineRecord: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            machineCode: string;
            machineClass: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            siteId: string;
            siteName: string;
            retiredOn: string | null;
            /** @description Hours */
            fromHours: number;
            /** @description Hours */
            toHours: number;
            /** Format: int64 */
            repairCount: number;
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            repairCents: number;
            centsPerHour: number | null;
            trend: string;
            laplace: number | null;
            laplaceP: number | null;
            milHdbkP: number | null;
        };
        /** @description Repair or replace: cost per hour of keeping against a new machine */
        MachineAdvice: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            machineCode: string;
            machineClass: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            siteId: string;
            siteName: string;
            retiredOn: string | null;
            /** @description Hours */
            fromHours: number;
            /** @description Hours */
            toHours: number;
            /** Format: int64 */
            repairCount: number;
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            repairCents: number;
            centsPerHour: number | null;
            trend: string;
            laplace: number | null;
            laplaceP: number | null;
            milHdbkP: number | null;
            repairs: {
                /**
                 * Format: date
                 * @description Local date, YYYY-MM-DD
                 */
                on: string;
                /** @description Hours */
                hours: number;
                code: string;
                /**
                 * Format: int32
                 * @description Integer minor units of the shop’s currency
                 */
                cents: number;
            }[];
            /** @description null without newPriceCents, or without watched hours */
            advice: {
                keepCentsPerHour: number;
                keepLowCentsPerHour: number;
                keepHighCentsPerHour: number;
                replaceCentsPerHour: number;
                breakEvenRepairCentsNextYear: number;
                expectedRepairCentsNextYear: number;
                /** @enum {string} */
                verdict: "keep" | "replace" | "cannot-tell";
                sentence: string;
            } | null;
            assumptions: string[];
        };
        /** @description Mean repairs (or cents) per machine by machine hours, with 90 % interval */
        MeanCumulative: {
            /** @enum {string} */
            of: "repairs" | "cents";
            /** Format: int64 */
            machines: number;
            points: {
                /** @description Hours */
                ageHours: number;
                /** Format: int64 */
                atRisk: number;
                mean: number;
                low: number;
                high: number;
            }[];
            powerLaw: {
                exponent: number;
                /** Format: int64 */
                events: number;
            } | null;
            statement: string;
        };
        /** @description A re-fit of all lives; one runs each month, or when asked for */
        LifeRun: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /** @enum {string} */
            status: "asked" | "running" | "done" | "failed" | "cancelled";
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            asOf: string;
            /** Format: date-time */
            askedAt: string;
            finishedAt: string | null;
            error: string | null;
        };
        /** @description One page; `next` is null on the last */
        IntervalProposalPage: {
            items: components["schemas"]["IntervalProposal"][];
            next: string | null;
        };
        /** @description A change of an interval that lives suggest; a person decides, and can take it back */
        IntervalProposal: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            serviceItemId: string;
            itemCode: string;
            itemTitle: string;
            machineClass: string;
            /** @enum {string} */
            state: "proposed" | "accepted" | "refused" | "reversed" | "superseded";
            currentHours: string | null;
            proposedHours: string;
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            savesCentsPerThousandHours: number;
            evidence: {
                [key: string]: unknown;
            };
            sentence: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            proposedOn: string;
            decidedAt: string | null;
            decisionNote: string;
            reversedAt: string | null;
            /**
             * Format: int64
             * @description Grows with every change; the ETag carries it
             */
            version: number;
        };
        ProposalDecision: {
            /** @default  */
            note?: string;
        };
        FailureCauseCreate: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            happenedOn: string;
            rootCause: string;
            /** @default  */
            note?: string;
            /**
             * @description Failures that this event caused
             * @default []
             */
            completionIds?: string[];
        };
        /** @description One event behind failures, e.g. wire around two spindles; counts once */
        FailureCause: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            happenedOn: string;
            rootCause: string;
            note: string;
        };
        /** @description One page; `next` is null on the last */
        FailureCausePage: {
            items: components["schemas"]["FailureCause"][];
            next: string | null;
        };
        /** @description One page; `next` is null on the last */
        PlanRunPage: {
            items: components["schemas"]["PlanRun"][];
            next: string | null;
        };
        PlanRun: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: int64
             * @description Grows with every change; the ETag carries it
             */
            version: number;
            /** @enum {string} */
            status: "asked" | "running" | "done" | "failed" | "cancelled";
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            weekOf: string;
            /** Format: int64 */
            days: number;
            /** Format: int64 */
            seed: number;
            /** Format: int64 */
            seconds: number;
            /** Format: int64 */
            threads: number;
            combine: boolean;
            iterations: number | null;
            cancelAsked: boolean;
            /** Format: int64 */
            attempts: number;
            /** Format: date-time */
            askedAt: string;
            startedAt: string | null;
            finishedAt: string | null;
            totalCents: number | null;
            snapshotHash: string | null;
            /** @description What to know about how the plan was made */
            warning: string | null;
            progress: {
                /** Format: int64 */
                iterations: number;
                /**
                 * Format: int32
                 * @description Integer minor units of the shop’s currency
                 */
                totalCents: number;
                /** Format: int64 */
                visits: number;
                /** Format: int64 */
                items: number;
                /** Format: int64 */
                leftOut: number;
                /** Format: int64 */
                mustDoMissing: number;
            } | null;
            error: string | null;
            /** @description The run of the week after, asked for together with this one */
            nextRunId: string | null;
        };
        PlanRunCreate: {
            /**
             * Format: date
             * @description First day of the plan; usually a Monday
             */
            weekOf: string;
            /**
             * Format: int32
             * @default 7
             */
            days?: number;
            /**
             * Format: int32
             * @description So many weeks, each planned for itself, one after the other: what one does counts as done in those after it, and what was only proposed in them gives way. The answer is the run of the first; `nextRunId` leads on. More than one wants 7 days
             * @default 1
             */
            weeks?: number;
            /**
             * Format: int32
             * @description How long to search, for each run
             */
            seconds?: number;
            /**
             * Format: int32
             * @description Instead of seconds: the same plan again for the same seed
             */
            iterations?: number;
            /**
             * Format: int32
             * @default 1
             */
            seed?: number;
            /**
             * Format: int32
             * @description Searches side by side; left out = as the service is set, one when iterations are given
             */
            threads?: number;
            /** @description Combine routes by set partitioning near the end; left out = from 20 seconds on */
            combine?: boolean;
        };
        /** @description How one plan of a week differs from another */
        PlanDifference: {
            cents: {
                [key: string]: number;
            };
            visits: {
                /**
                 * Format: uuid
                 * @description Identifier of a row
                 */
                siteId: string;
                /** @enum {string} */
                what: "same" | "retimed" | "moved-day" | "moved-technician" | "added" | "dropped";
                before: string | null;
                after: string | null;
                minutesLater: number | null;
                itemsAdded: string[];
                itemsDropped: string[];
            }[];
            nowPlanned: string[];
            nowLeftOut: string[];
        };
        /** @description Who drives where, when, doing what, with which parts; what was left out and what waiting costs */
        Week: {
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            weekOf: string;
            /** Format: int64 */
            days: number;
            planRunId: string | null;
            /** @description The days that were planned as one with these: cost and what is left out are of all of them */
            planned: {
                /**
                 * Format: date
                 * @description Local date, YYYY-MM-DD
                 */
                weekOf: string;
                /** Format: int64 */
                days: number;
            } | null;
            routes: components["schemas"]["DayRoute"][];
            /** @description Visits to come that nobody can make where they stand, as people and access are now */
            cannotBeMade: {
                /**
                 * Format: uuid
                 * @description Identifier of a row
                 */
                visitId: string;
                /** @enum {string} */
                why: "technician-away" | "technician-off" | "site-closed" | "barred";
            }[];
            /** @description The first of what is left out: what must be done, then the dearest */
            leftOut: components["schemas"]["LeftOutItem"][];
            /**
             * Format: int64
             * @description How much is left out in all
             */
            leftOutCount: number;
            /**
             * Format: int64
             * @description What leaving all of it costs
             */
            leftOutCents: number;
            /** @description Cursor of the rest, for `GET /v1/week/left-out`; null when there is none */
            leftOutNext: string | null;
            /** @description Of the plan with the changes since, cents; of visits that nobody can make, what leaving their work costs */
            cost: {
                [key: string]: number;
            } | null;
            /** @description What to know about how the plan was made */
            warning: string | null;
        };
        DayRoute: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            technicianId: string;
            technicianName: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            date: string;
            /** Format: date-time */
            leaveAt: string;
            /** Format: date-time */
            returnAt: string;
            lunchFrom: string | null;
            lunchTo: string | null;
            /** Format: int64 */
            driveMinutes: number;
            /** Format: int64 */
            driveMetres: number;
            /** Format: int64 */
            workMinutes: number;
            /** Format: int64 */
            waitMinutes: number;
            /** Format: int64 */
            overtimeMinutes: number;
            load: {
                partId: string | null;
                name: string;
                quantity: number;
                unit: string;
                missing: number;
            }[];
            visits: components["schemas"]["Visit"][];
        };
        /** @description One arrival of one technician at one site */
        Visit: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: int64
             * @description Grows with every change; the ETag carries it
             */
            version: number;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            siteId: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            technicianId: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            date: string;
            /** @enum {string} */
            state: "proposed" | "confirmed" | "done" | "cancelled";
            /** Format: int64 */
            driveMinutes: number;
            /** Format: date-time */
            arriveAt: string;
            /** Format: date-time */
            startAt: string;
            /** Format: date-time */
            endAt: string;
            /** Format: int64 */
            setupMinutes: number;
            /** Format: int64 */
            preparationMinutes: number;
            promisedFrom: string | null;
            promisedTo: string | null;
            /** @description Held fast by the shop: planning again leaves it as it is */
            pinned: boolean;
            /** @description null for grounds supervisors */
            moveCents: number | null;
            /** @description null for grounds supervisors */
            marginalCents: number | null;
            /** @description null for grounds supervisors */
            reason: string | null;
            finishedAt: string | null;
            /** @description What the site said of it last */
            answer: components["schemas"]["VisitAnswer"] | null;
            items: components["schemas"]["VisitItem"][];
        };
        VisitItem: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            machineId: string;
            code: string;
            slot: string | null;
            title: string;
            /** @enum {string} */
            role: "must-do" | "anchor" | "rider" | "found";
            /** Format: int64 */
            minutes: number;
            /** Format: int64 */
            sharedMinutes: number;
            /** @description null for grounds supervisors */
            waitingCents: number | null;
            /** @description null for grounds supervisors */
            reason: string | null;
            /** @enum {string} */
            state: "planned" | "done" | "skipped";
            /** @description Its machine stands at another site by now: this visit does not reach it, until the week is planned again */
            isElsewhere: boolean;
        };
        /** @description Work left for later, and what waiting costs */
        LeftOutItem: {
            itemId: string;
            machineId: string | null;
            title: string;
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            cents: number;
            mustDo: boolean;
            code: string;
            reason: string;
            /** @description The obstacle in the reason */
            obstacle?: components["schemas"]["Clause"];
            /** @description For what must be done: the mildest rules to give up so that it fits */
            remedies?: string[];
            /** @description The remedies, each by its rules */
            remedyRules?: components["schemas"]["Clause"][][];
        };
        /** @description One page; `next` is null on the last */
        LeftOutItemPage: {
            items: components["schemas"]["LeftOutItem"][];
            next: string | null;
        };
        /** @description What more time on each technician’s day would save */
        ExtraTime: {
            /** Format: int64 */
            minutes: number;
            days: {
                /**
                 * Format: uuid
                 * @description Identifier of a row
                 */
                technicianId: string;
                /**
                 * Format: date
                 * @description Local date, YYYY-MM-DD
                 */
                date: string;
                /** Format: int64 */
                cents: number;
                itemId: string | null;
                title: string | null;
            }[];
        };
        /** @description Promise every proposed visit of the week: its planned start, give or take slotMinutes */
        WeekConfirm: {
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            weekOf: string;
            /**
             * Format: int32
             * @default 7
             */
            days?: number;
            /**
             * Format: int32
             * @default 30
             */
            slotMinutes?: number;
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             * @default 2500
             */
            moveCents?: number;
        };
        WeekConfirmed: {
            /** Format: int64 */
            confirmed: number;
        };
        /** @description One page; `next` is null on the last */
        VisitPage: {
            items: components["schemas"]["Visit"][];
            next: string | null;
        };
        /** @description Confirm a visit (its promise defaults to the planned start, half an hour each way), cancel it, or hold it fast */
        VisitChanges: {
            /** @enum {string} */
            state?: "confirmed" | "cancelled";
            /** Format: date-time */
            promisedFrom?: string;
            /** Format: date-time */
            promisedTo?: string;
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            moveCents?: number;
            pinned?: boolean;
        };
        VisitFinish: {
            /** Format: date-time */
            finishedAt: string;
            /** @default  */
            signedBy?: string;
            /** @description Visit items that were done; the others are skipped and stay due */
            done: string[];
            /** @default [] */
            readings?: {
                /**
                 * Format: uuid
                 * @description Identifier of a row
                 */
                machineId: string;
                hours: string;
            }[];
            /** @default {} */
            charges?: components["schemas"]["ChargeFacts"];
        };
        /** @description What was done, as far as it is charged */
        ChargeFacts: {
            purchaseOrder?: string;
            note?: string;
            /** @description Minutes and coverage of visit items. Where minutes are not stated, those timed at the site count, shared by standard minutes; without any, the standard ones */
            work?: {
                /**
                 * Format: uuid
                 * @description Identifier of a row
                 */
                itemId: string;
                /** Format: int32 */
                minutes?: number;
                coverage?: {
                    /** @enum {string} */
                    kind: "warranty" | "goodwill";
                    reason: string;
                };
            }[];
            /** @description All parts used; absent = those recorded at the machines, and the standard parts of the work for which none was recorded, nor one put in their place */
            parts?: {
                /**
                 * Format: uuid
                 * @description Identifier of a row
                 */
                partId: string;
                /** @default null */
                itemId?: string | null;
                /** @default null */
                machineId?: string | null;
                quantity: string;
                coverage?: {
                    /** @enum {string} */
                    kind: "warranty" | "goodwill";
                    reason: string;
                };
            }[];
        };
        /** @description It suits, or it should come on another day */
        VisitAnswerCreate: {
            /** @enum {string} */
            kind: "suits" | "move";
            /** @default  */
            reason?: string;
            /** @default [] */
            days?: string[];
        };
        /** @description One page; `next` is null on the last */
        VisitAnswerPage: {
            items: components["schemas"]["VisitAnswer"][];
            next: string | null;
        };
        VisitAnswerReply: {
            /** @enum {string} */
            decision: "met" | "declined";
            /** @default  */
            reply?: string;
        };
        /** @description What the visit would cost at every other place, all else in its order */
        MovePrices: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            visitId: string;
            stamp: string;
            places: {
                /**
                 * Format: uuid
                 * @description Identifier of a row
                 */
                technicianId: string;
                /**
                 * Format: date
                 * @description Local date, YYYY-MM-DD
                 */
                date: string;
                /**
                 * Format: int64
                 * @description Place in the order of that day, from 0, visits begun not counted
                 */
                order: number;
                startAt: string;
                endAt: string;
                /** Format: int64 */
                cents: number;
                /** @description True of no place = nobody can make it where it stands: prices are against leaving it undone */
                isWhereItStands: boolean;
                /** @description Visits whose promise would be broken */
                breaks: string[];
                shifts: {
                    /**
                     * Format: uuid
                     * @description Identifier of a row
                     */
                    visitId: string;
                    /** Format: int64 */
                    minutes: number;
                }[];
            }[];
            closed: {
                /**
                 * Format: uuid
                 * @description Identifier of a row
                 */
                technicianId: string;
                /**
                 * Format: date
                 * @description Local date, YYYY-MM-DD
                 */
                date: string;
                /** @enum {string} */
                obstacle: "skill" | "part" | "access" | "machines-down" | "time";
            }[];
        };
        VisitMove: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            technicianId: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            date: string;
            /**
             * Format: int32
             * @description Left out = the cheapest place of the day
             */
            order?: number;
            /**
             * @description Hold it fast there when the week is planned again
             * @default true
             */
            pinned?: boolean;
            /** @description From the prices: refused when the week has changed since */
            stamp?: string;
        };
        /** @description The change as it was made */
        VisitMoved: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            visitId: string;
            difference: components["schemas"]["WeekDifference"];
        };
        /** @description What a change of the week costs and whom it concerns */
        WeekDifference: {
            cents: components["schemas"]["CostDifference"];
            visits: components["schemas"]["VisitChange"][];
            leftOut: string[];
        };
        /** @description What a change costs, by part, in cents; negative = it saves */
        CostDifference: {
            /** Format: int64 */
            total: number;
            /** Format: int64 */
            travel: number;
            /** Format: int64 */
            labour: number;
            /** Format: int64 */
            overtime: number;
            /** Format: int64 */
            visitFees: number;
            /** Format: int64 */
            preference: number;
            /** Format: int64 */
            timing: number;
            /** Format: int64 */
            deferral: number;
            /** Format: int64 */
            laterLabour: number;
            /** Format: int64 */
            disruption: number;
        };
        /** @description One visit that a change moves, adds or drops, and who has to be told */
        VisitChange: {
            visitId: string | null;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            siteId: string;
            siteName: string;
            customerName: string;
            /** @enum {string} */
            what: "added" | "moved" | "retimed" | "dropped";
            /** @description null = a new visit, or one that could not be made where it stood */
            from: {
                /**
                 * Format: uuid
                 * @description Identifier of a row
                 */
                technicianId: string;
                /**
                 * Format: date
                 * @description Local date, YYYY-MM-DD
                 */
                date: string;
                startAt: string;
            } | null;
            to: {
                /**
                 * Format: uuid
                 * @description Identifier of a row
                 */
                technicianId: string;
                /**
                 * Format: date
                 * @description Local date, YYYY-MM-DD
                 */
                date: string;
                startAt: string;
            } | null;
            /** @description Of a visit that is dropped: the visits that do its work instead; none = its work waits */
            workTo: {
                /**
                 * Format: uuid
                 * @description Identifier of a row
                 */
                technicianId: string;
                /**
                 * Format: date
                 * @description Local date, YYYY-MM-DD
                 */
                date: string;
                startAt: string;
                technicianName: string;
            }[];
            minutesLater: number | null;
            breaksPromise: boolean;
        };
        /** @description One page; `next` is null on the last */
        WeekChangePage: {
            items: components["schemas"]["WeekChange"][];
            next: string | null;
        };
        /** @description A change made to a planned week */
        WeekChange: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            planRunId: string;
            /** @enum {string} */
            kind: "move" | "road-call";
            /** Format: date-time */
            madeAt: string;
            madeBy: string | null;
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            cents: number;
            /** @description A WeekDifference without names */
            difference: Record<string, never>;
        };
        SymptomList: {
            items: components["schemas"]["Symptom"][];
        };
        /** @description What a caller can tell, and what to ask */
        Symptom: {
            code: string;
            title: string;
            questions: {
                code: string;
                question: string;
            }[];
            /** Format: int64 */
            minutes: number;
            skill: string;
            cautions: string[];
        };
        RoadCallOptionsAsk: {
            /**
             * Format: int32
             * @description Planned days with work left to look at
             * @default 3
             */
            daysAhead?: number;
        };
        /** @description The best of each way to fit a call into the planned days */
        RoadCallOptions: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            roadCallId: string;
            stamp: string;
            /** @description First and last planned day looked at; null = nobody works any more in what is planned */
            lookedAt: {
                /**
                 * Format: date
                 * @description Local date, YYYY-MM-DD
                 */
                from: string;
                /**
                 * Format: date
                 * @description Local date, YYYY-MM-DD
                 */
                until: string;
            } | null;
            options: {
                /** @enum {string} */
                kind: "squeeze-in" | "push-one" | "re-plan";
                sentence: string;
                /**
                 * Format: uuid
                 * @description Identifier of a row
                 */
                technicianId: string;
                technicianName: string;
                /**
                 * Format: date
                 * @description Local date, YYYY-MM-DD
                 */
                date: string;
                startAt: string;
                endAt: string;
                difference: components["schemas"]["WeekDifference"];
            }[];
            likelyParts: {
                /**
                 * Format: uuid
                 * @description Identifier of a row
                 */
                partId: string;
                name: string;
                quantity: number;
                onHand: number;
                because: string;
            }[];
            cautions: string[];
        };
        RoadCallChoice: {
            /** @enum {string} */
            kind: "squeeze-in" | "push-one" | "re-plan";
            stamp: string;
        };
        VisitBarCreate: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            siteId: string;
            /** @default null */
            technicianId?: string | null;
            /** @default null */
            date?: string | null;
            /** @default  */
            reason?: string;
        };
        /** @description Where the planner must not send somebody; null = whoever, whenever */
        VisitBar: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            siteId: string;
            technicianId: string | null;
            date: string | null;
            reason: string;
        };
        /** @description One page; `next` is null on the last */
        VisitBarPage: {
            items: components["schemas"]["VisitBar"][];
            next: string | null;
        };
        SiteEventCreate: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            siteId: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            date: string;
            /** @default 00:00 */
            from?: string;
            name: string;
        };
        /** @description All machines of the site are able to mow by then */
        SiteEvent: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            siteId: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            date: string;
            from: string;
            name: string;
        };
        /** @description One page; `next` is null on the last */
        SiteEventPage: {
            items: components["schemas"]["SiteEvent"][];
            next: string | null;
        };
        /** @description What to order by when, so that no planned visit lacks a part */
        OrderList: {
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            asOf: string;
            lines: {
                /**
                 * Format: uuid
                 * @description Identifier of a row
                 */
                partId: string;
                code: string;
                name: string;
                /** Format: int64 */
                quantity: number;
                /**
                 * Format: date
                 * @description Local date, YYYY-MM-DD
                 */
                orderBy: string;
                /**
                 * Format: date
                 * @description Local date, YYYY-MM-DD
                 */
                firstNeededOn: string;
                isLate: boolean;
                /** @enum {string} */
                certainty: "planned" | "forecast";
                purposes: string[];
                /** @description The purposes by parts, for wording them in another language */
                uses: {
                    code: string;
                    slot: string | null;
                    title: string;
                    siteName: string;
                }[];
            }[];
        };
        AlertList: {
            items: components["schemas"]["Alert"][];
        };
        Alert: {
            /** @enum {string} */
            kind: "move-asked" | "order-overdue" | "document-behind" | "part-late-for-visit" | "part-late-for-stopgap" | "stopgap-limit-near" | "stopgap-limit-past";
            /** @description null = it concerns an order of parts */
            siteId: string | null;
            siteName: string | null;
            /** @description null = it concerns a visit as a whole, or an order of parts */
            machineId: string | null;
            machineCode: string | null;
            visitId: string | null;
            stopgapId: string | null;
            /** @description The order of parts: PATCH /v1/part-orders/{id} */
            orderId: string | null;
            /** @description The issued document: GET /v1/charge-documents/{id}/since */
            documentId: string | null;
            /** @description The wish to answer: POST /v1/visit-answers/{id}/reply */
            answerId: string | null;
            sentence: string;
            /** @description The next best thing to do */
            choice: string;
            clauses: {
                sentence: components["schemas"]["Clause"];
                choice: components["schemas"]["Clause"];
            };
            /** @description Where the visit would go, ready for POST /v1/visits/{id}/move */
            move: {
                /**
                 * Format: uuid
                 * @description Identifier of a row
                 */
                technicianId: string;
                /**
                 * Format: date
                 * @description Local date, YYYY-MM-DD
                 */
                date: string;
                /** Format: int64 */
                order: number;
                /** Format: int64 */
                cents: number;
                stamp: string;
            } | null;
        };
        /** @description How the shop turns finished visits into money */
        ChargeSettings: {
            /**
             * Format: int64
             * @description 0 = the starting values, never changed
             */
            version: number;
            /** @enum {string} */
            form: "us-sales-tax" | "en16931";
            seller: {
                legalName: string;
                taxNumber: string;
                address: {
                    street: string;
                    city: string;
                    postalCode: string;
                    /** @description State or province */
                    subdivision: string;
                    country: string;
                };
            };
            labour: {
                /** @enum {string} */
                basis: "actual" | "flat";
                /** @description Amount in the shop’s currency as a decimal string */
                ratePerHour: string;
                ratesBySkill: {
                    [key: string]: string;
                };
                /** Format: int32 */
                roundToMinutes: number;
                /** @enum {string} */
                rounding: "up" | "nearest" | "down";
                /** @enum {string} */
                roundEach: "line" | "visit";
                overtimePercent: string;
                regularFrom: string;
                regularTo: string;
            };
            travel: {
                /** @enum {string} */
                rule: "none";
            } | {
                /** @enum {string} */
                rule: "visit-fee";
                /** @description Amount in the shop’s currency as a decimal string */
                fee: string;
            } | {
                /** @enum {string} */
                rule: "zone";
                zones: {
                    name: string;
                    upToKm: number;
                    /** @description Amount in the shop’s currency as a decimal string */
                    fee: string;
                }[];
            } | {
                /** @enum {string} */
                rule: "shared-drive";
                /** @description Amount in the shop’s currency as a decimal string */
                ratePerHour: string;
            };
            parts: {
                /** @enum {string} */
                basis: "price" | "cost";
                markUps: {
                    upToCost: string | null;
                    percent: string;
                }[];
            };
            consumables: {
                /** @enum {string} */
                rule: "none";
            } | {
                /** @enum {string} */
                rule: "listed";
                prices: {
                    name: string;
                    /** @description Amount in the shop’s currency as a decimal string */
                    unitPrice: string;
                }[];
            } | {
                /** @enum {string} */
                rule: "share-of-labour";
                percent: string;
                /** @description Amount in the shop’s currency as a decimal string */
                atMost: string;
            };
            /** @description Amount in the shop’s currency as a decimal string */
            minimumCharge: string;
            taxes: {
                jurisdiction: string;
                /** @enum {string} */
                level: "state" | "local";
                percent: string;
                on: ("labour" | "travel" | "parts" | "consumables" | "minimum")[];
                /** @description null = at every site */
                siteCodes: string[] | null;
            }[];
            accounts: {
                receivable: string;
                revenue: {
                    labour: string;
                    travel: string;
                    parts: string;
                    consumables: string;
                    minimum: string;
                };
                salesTax: string;
            };
            supervisorsSeeDocuments: boolean;
        };
        /** @description Lists replace the lists that stand */
        ChargeSettingsChanges: {
            /** @enum {string} */
            form?: "us-sales-tax" | "en16931";
            seller?: {
                legalName?: string;
                taxNumber?: string;
                address?: {
                    street: string;
                    city: string;
                    postalCode: string;
                    /** @description State or province */
                    subdivision: string;
                    country: string;
                };
            };
            labour?: {
                /** @enum {string} */
                basis?: "actual" | "flat";
                /** @description Amount in the shop’s currency as a decimal string */
                ratePerHour?: string;
                ratesBySkill?: {
                    [key: string]: string;
                };
                /** Format: int32 */
                roundToMinutes?: number;
                /** @enum {string} */
                rounding?: "up" | "nearest" | "down";
                /** @enum {string} */
                roundEach?: "line" | "visit";
                overtimePercent?: string;
                regularFrom?: string;
                regularTo?: string;
            };
            travel?: {
                /** @enum {string} */
                rule: "none";
            } | {
                /** @enum {string} */
                rule: "visit-fee";
                /** @description Amount in the shop’s currency as a decimal string */
                fee: string;
            } | {
                /** @enum {string} */
                rule: "zone";
                zones: {
                    name: string;
                    upToKm: number;
                    /** @description Amount in the shop’s currency as a decimal string */
                    fee: string;
                }[];
            } | {
                /** @enum {string} */
                rule: "shared-drive";
                /** @description Amount in the shop’s currency as a decimal string */
                ratePerHour: string;
            };
            parts?: {
                /** @enum {string} */
                basis?: "price" | "cost";
                markUps?: {
                    upToCost: string | null;
                    percent: string;
                }[];
            };
            consumables?: {
                /** @enum {string} */
                rule: "none";
            } | {
                /** @enum {string} */
                rule: "listed";
                prices: {
                    name: string;
                    /** @description Amount in the shop’s currency as a decimal string */
                    unitPrice: string;
                }[];
            } | {
                /** @enum {string} */
                rule: "share-of-labour";
                percent: string;
                /** @description Amount in the shop’s currency as a decimal string */
                atMost: string;
            };
            /** @description Amount in the shop’s currency as a decimal string */
            minimumCharge?: string;
            taxes?: {
                jurisdiction: string;
                /** @enum {string} */
                level: "state" | "local";
                percent: string;
                on: ("labour" | "travel" | "parts" | "consumables" | "minimum")[];
                /** @description null = at every site */
                siteCodes: string[] | null;
            }[];
            accounts?: {
                receivable?: string;
                revenue?: {
                    labour: string;
                    travel: string;
                    parts: string;
                    consumables: string;
                    minimum: string;
                };
                salesTax?: string;
            };
            supervisorsSeeDocuments?: boolean;
        };
        /** @description What differs from the shop’s charge settings for this customer */
        CustomerCharges: {
            /** Format: int64 */
            version: number;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            customerId: string;
            terms: {
                travel?: {
                    /** @enum {string} */
                    rule: "none";
                } | {
                    /** @enum {string} */
                    rule: "visit-fee";
                    /** @description Amount in the shop’s currency as a decimal string */
                    fee: string;
                } | {
                    /** @enum {string} */
                    rule: "zone";
                    zones: {
                        name: string;
                        upToKm: number;
                        /** @description Amount in the shop’s currency as a decimal string */
                        fee: string;
                    }[];
                } | {
                    /** @enum {string} */
                    rule: "shared-drive";
                    /** @description Amount in the shop’s currency as a decimal string */
                    ratePerHour: string;
                };
                consumables?: {
                    /** @enum {string} */
                    rule: "none";
                } | {
                    /** @enum {string} */
                    rule: "listed";
                    prices: {
                        name: string;
                        /** @description Amount in the shop’s currency as a decimal string */
                        unitPrice: string;
                    }[];
                } | {
                    /** @enum {string} */
                    rule: "share-of-labour";
                    percent: string;
                    /** @description Amount in the shop’s currency as a decimal string */
                    atMost: string;
                };
                /** @description Amount in the shop’s currency as a decimal string */
                minimumCharge?: string;
                taxes?: {
                    jurisdiction: string;
                    /** @enum {string} */
                    level: "state" | "local";
                    percent: string;
                    on: ("labour" | "travel" | "parts" | "consumables" | "minimum")[];
                    /** @description null = at every site */
                    siteCodes: string[] | null;
                }[];
                labour?: {
                    /** @enum {string} */
                    basis?: "actual" | "flat";
                    /** @description Amount in the shop’s currency as a decimal string */
                    ratePerHour?: string;
                    ratesBySkill?: {
                        [key: string]: string;
                    };
                    /** Format: int32 */
                    roundToMinutes?: number;
                    /** @enum {string} */
                    rounding?: "up" | "nearest" | "down";
                    /** @enum {string} */
                    roundEach?: "line" | "visit";
                    overtimePercent?: string;
                    regularFrom?: string;
                    regularTo?: string;
                };
                parts?: {
                    /** @enum {string} */
                    basis?: "price" | "cost";
                    markUps?: {
                        upToCost: string | null;
                        percent: string;
                    }[];
                };
                buyer?: {
                    legalName?: string;
                    taxNumber?: string;
                    address?: {
                        street: string;
                        city: string;
                        postalCode: string;
                        /** @description State or province */
                        subdivision: string;
                        country: string;
                    };
                    purchaseOrder?: string;
                    exemptionCertificate?: string;
                };
            };
        };
        /** @description null = as the shop’s settings have it, or nothing stated */
        CustomerChargesChanges: {
            travel?: ({
                /** @enum {string} */
                rule: "none";
            } | {
                /** @enum {string} */
                rule: "visit-fee";
                /** @description Amount in the shop’s currency as a decimal string */
                fee: string;
            } | {
                /** @enum {string} */
                rule: "zone";
                zones: {
                    name: string;
                    upToKm: number;
                    /** @description Amount in the shop’s currency as a decimal string */
                    fee: string;
                }[];
            } | {
                /** @enum {string} */
                rule: "shared-drive";
                /** @description Amount in the shop’s currency as a decimal string */
                ratePerHour: string;
            }) | null;
            consumables?: ({
                /** @enum {string} */
                rule: "none";
            } | {
                /** @enum {string} */
                rule: "listed";
                prices: {
                    name: string;
                    /** @description Amount in the shop’s currency as a decimal string */
                    unitPrice: string;
                }[];
            } | {
                /** @enum {string} */
                rule: "share-of-labour";
                percent: string;
                /** @description Amount in the shop’s currency as a decimal string */
                atMost: string;
            }) | null;
            minimumCharge?: string | null;
            taxes?: {
                jurisdiction: string;
                /** @enum {string} */
                level: "state" | "local";
                percent: string;
                on: ("labour" | "travel" | "parts" | "consumables" | "minimum")[];
                /** @description null = at every site */
                siteCodes: string[] | null;
            }[] | null;
            labour?: {
                basis?: ("actual" | "flat") | null;
                ratePerHour?: string | null;
                ratesBySkill?: {
                    [key: string]: string;
                } | null;
                roundToMinutes?: number | null;
                rounding?: ("up" | "nearest" | "down") | null;
                roundEach?: ("line" | "visit") | null;
                overtimePercent?: string | null;
                regularFrom?: string | null;
                regularTo?: string | null;
            } | null;
            parts?: {
                basis?: ("price" | "cost") | null;
                markUps?: {
                    upToCost: string | null;
                    percent: string;
                }[] | null;
            } | null;
            buyer?: {
                legalName?: string | null;
                taxNumber?: string | null;
                address?: {
                    street: string;
                    city: string;
                    postalCode: string;
                    /** @description State or province */
                    subdivision: string;
                    country: string;
                } | null;
                purchaseOrder?: string | null;
                exemptionCertificate?: string | null;
            } | null;
        };
        /** @description One page; `next` is null on the last */
        ChargeDocumentPage: {
            items: components["schemas"]["ChargeDocument"][];
            next: string | null;
        };
        /** @description What a finished visit costs; immutable once issued */
        ChargeDocument: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: int64
             * @description Grows with every change; the ETag carries it
             */
            version: number;
            /** @enum {string} */
            state: "draft" | "issued";
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            visitId: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            customerId: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            siteId: string;
            creditsId: string | null;
            replacesId: string | null;
            creditedById: string | null;
            /**
             * Format: int32
             * @description Integer minor units of the shop’s currency
             */
            totalCents: number;
            /** Format: date-time */
            createdAt: string;
            issuedAt: string | null;
            /** @description null while it is a draft */
            accounting: components["schemas"]["AccountingState"] | null;
            document: components["schemas"]["ChargeDocumentBody"];
        };
        /** @description What accounting said of it */
        AccountingState: {
            /** @enum {string} */
            state: "waiting" | "acknowledged" | "refused" | "paid";
            receiverNumber: string | null;
            refusedReason: string | null;
            paidOn: string | null;
            paymentReference: string | null;
        };
        /** @description The document itself: amounts are decimal strings and add up exactly */
        ChargeDocumentBody: {
            /** @enum {string} */
            kind: "invoice" | "credit";
            /** @enum {string} */
            form: "us-sales-tax" | "en16931";
            number: string | null;
            issuedOn: string | null;
            dueOn: string | null;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            servicedOn: string;
            site: {
                code: string;
                name: string;
            };
            purchaseOrder: string;
            seller: {
                code: string;
                legalName: string;
                taxNumber: string;
                address: {
                    street: string;
                    city: string;
                    postalCode: string;
                    /** @description State or province */
                    subdivision: string;
                    country: string;
                };
            };
            buyer: {
                code: string;
                legalName: string;
                taxNumber: string;
                address: {
                    street: string;
                    city: string;
                    postalCode: string;
                    /** @description State or province */
                    subdivision: string;
                    country: string;
                };
            };
            /** @description The document that a credit takes back, or that this one replaces */
            refersTo: {
                number: string;
                /**
                 * Format: date
                 * @description Local date, YYYY-MM-DD
                 */
                issuedOn: string;
            } | null;
            note: string;
            currency: string;
            lines: {
                id: string;
                /** @enum {string} */
                kind: "labour" | "travel" | "parts" | "consumables" | "minimum";
                name: string;
                itemCode: string;
                quantity: string;
                /** @description UN/ECE Recommendation 20 */
                unitCode: string;
                unitPrice: string;
                /** @description The price is for so many units */
                priceBase: string;
                /** @description Decimal string with the currency’s decimals */
                net: string;
                tax: {
                    /**
                     * @description UNCL 5305: standard, exempt, zero rated, outside the scope
                     * @enum {string}
                     */
                    category: "S" | "E" | "Z" | "O";
                    rates: {
                        jurisdiction: string;
                        /** @enum {string} */
                        level: "state" | "local";
                        percent: string;
                    }[];
                    reason: string | null;
                };
                machine: {
                    code: string;
                    serial: string;
                    hours: string;
                } | null;
                /** @description Why the line costs nothing */
                coverage: {
                    /** @enum {string} */
                    kind: "contract" | "warranty" | "goodwill";
                    reason: string;
                } | null;
            }[];
            charges: {
                /** @enum {string} */
                kind: "labour" | "travel" | "parts" | "consumables" | "minimum";
                reason: string;
                /** @description Decimal string with the currency’s decimals */
                amount: string;
                tax: {
                    /**
                     * @description UNCL 5305: standard, exempt, zero rated, outside the scope
                     * @enum {string}
                     */
                    category: "S" | "E" | "Z" | "O";
                    rates: {
                        jurisdiction: string;
                        /** @enum {string} */
                        level: "state" | "local";
                        percent: string;
                    }[];
                    reason: string | null;
                };
            }[];
            taxes: {
                /**
                 * @description UNCL 5305: standard, exempt, zero rated, outside the scope
                 * @enum {string}
                 */
                category: "S" | "E" | "Z" | "O";
                rate: {
                    jurisdiction: string;
                    /** @enum {string} */
                    level: "state" | "local";
                    percent: string;
                } | null;
                reason: string | null;
                /** @description Decimal string with the currency’s decimals */
                base: string;
                /** @description Decimal string with the currency’s decimals */
                tax: string;
            }[];
            totals: {
                /** @description Decimal string with the currency’s decimals */
                lines: string;
                /** @description Decimal string with the currency’s decimals */
                charges: string;
                /** @description Decimal string with the currency’s decimals */
                beforeTax: string;
                /** @description Decimal string with the currency’s decimals */
                tax: string;
                /** @description Decimal string with the currency’s decimals */
                withTax: string;
                /** @description Decimal string with the currency’s decimals */
                payable: string;
            };
        };
        /** @description What came to light of a visit, or was taken back, since its document was made */
        ChargesSince: {
            /** @description On record, and not charged */
            missing: {
                /** @enum {string} */
                kind: "work" | "part";
                code: string;
                name: string;
                slot: string | null;
                /** @description null = it is a part */
                machineCode: string | null;
                /** @description How many more, or fewer, of a part; null = it is work */
                quantity: string | null;
            }[];
            /** @description Charged, and not on record */
            surplus: {
                /** @enum {string} */
                kind: "work" | "part";
                code: string;
                name: string;
                slot: string | null;
                /** @description null = it is a part */
                machineCode: string | null;
                /** @description How many more, or fewer, of a part; null = it is work */
                quantity: string | null;
            }[];
            /** @description Who saw all of this and left the document as it is; null = nobody has */
            left: {
                by: string;
                /** Format: date-time */
                at: string;
                reason: string;
            } | null;
        };
        ChargeLeave: {
            reason: string;
        };
        Empty: Record<string, never>;
        ChargeCredit: {
            reason: string;
        };
        /** @description Credits the document and drafts another with the facts put right */
        ChargeAmendment: {
            reason: string;
            /** @default {} */
            facts?: components["schemas"]["ChargeFacts"];
        };
        /** @description In the order of commit, without gaps: what was seen stays seen */
        AccountingChanges: {
            items: {
                /** Format: int64 */
                sequence: number;
                /** @enum {string} */
                what: "issued" | "credited" | "acknowledged" | "refused" | "paid";
                /** Format: date-time */
                at: string;
                /**
                 * Format: uuid
                 * @description Identifier of a row
                 */
                documentId: string;
                number: string;
                /** @enum {string} */
                kind: "invoice" | "credit";
                /**
                 * Format: int32
                 * @description Integer minor units of the shop’s currency
                 */
                totalCents: number;
                currency: string;
            }[];
            /**
             * Format: int64
             * @description Send this as `after` next time, once everything here is handled
             */
            last: number;
            more: boolean;
        };
        Acknowledgement: {
            receiverNumber: string;
        };
        Payment: {
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            paidOn: string;
            /** @default  */
            reference?: string;
        };
        Refusal: {
            reason: string;
        };
        /** @description What the receiver has of the documents issued in these days */
        Reconciliation: {
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            from: string;
            /**
             * Format: date
             * @description Local date, YYYY-MM-DD
             */
            to: string;
            known: {
                /**
                 * Format: uuid
                 * @description Identifier of a row
                 */
                documentId: string;
                /**
                 * Format: int32
                 * @description Integer minor units of the shop’s currency
                 */
                totalCents: number;
                receiverNumber?: string;
            }[];
        };
        Reconciled: {
            /** Format: int64 */
            issued: number;
            /** @description Issued here, unknown there: fetch these */
            missing: {
                /**
                 * Format: uuid
                 * @description Identifier of a row
                 */
                documentId: string;
                number: string;
                /**
                 * Format: int32
                 * @description Integer minor units of the shop’s currency
                 */
                totalCents: number;
            }[];
            /** @description Known there with another total; ours is given */
            different: {
                /**
                 * Format: uuid
                 * @description Identifier of a row
                 */
                documentId: string;
                number: string;
                /**
                 * Format: int32
                 * @description Integer minor units of the shop’s currency
                 */
                totalCents: number;
            }[];
            /** @description Known there, not issued here in these days */
            unknown: string[];
        };
        /** @description One page; `next` is null on the last */
        AuditEntryPage: {
            items: components["schemas"]["AuditEntry"][];
            next: string | null;
        };
        /** @description Who did what */
        AuditEntry: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /** Format: date-time */
            at: string;
            /** @enum {string} */
            actorKind: "person" | "integration";
            actorName: string;
            action: string;
            subjectKind: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            subjectId: string;
            /** @description The machine it was about, if any */
            machineId: string | null;
            detail: {
                [key: string]: unknown;
            };
        };
        /** @description One page; `next` is null on the last */
        WebhookEndpointPage: {
            items: components["schemas"]["WebhookEndpoint"][];
            next: string | null;
        };
        /** @description Where another system is told what happens (Standard Webhooks 1.0.0) */
        WebhookEndpoint: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: int64
             * @description Grows with every change; the ETag carries it
             */
            version: number;
            url: string;
            description: string;
            types: ("visit.promised" | "visit.moved" | "visit.cancelled" | "visit.done" | "stopgap.recorded" | "stopgap.limit-near" | "reading.set-aside" | "document.issued" | "document.credited")[];
            /** @enum {string} */
            state: "active" | "disabled";
            disabledReason: string | null;
            failingSince: string | null;
            /** Format: date-time */
            createdAt: string;
        };
        WebhookEndpointCreate: {
            /**
             * Format: uri
             * @description https, on a public address; redirects are not followed
             */
            url: string;
            /** @default  */
            description?: string;
            /**
             * @description Empty = every type
             * @default []
             */
            types?: ("visit.promised" | "visit.moved" | "visit.cancelled" | "visit.done" | "stopgap.recorded" | "stopgap.limit-near" | "reading.set-aside" | "document.issued" | "document.credited")[];
        };
        /** @description The secret, whsec_…, is shown only once */
        WebhookEndpointCreated: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: int64
             * @description Grows with every change; the ETag carries it
             */
            version: number;
            url: string;
            description: string;
            types: ("visit.promised" | "visit.moved" | "visit.cancelled" | "visit.done" | "stopgap.recorded" | "stopgap.limit-near" | "reading.set-aside" | "document.issued" | "document.credited")[];
            /** @enum {string} */
            state: "active" | "disabled";
            disabledReason: string | null;
            failingSince: string | null;
            /** Format: date-time */
            createdAt: string;
            secret: string;
        };
        WebhookEndpointChanges: {
            /**
             * Format: uri
             * @description https, on a public address; redirects are not followed
             */
            url?: string;
            description?: string;
            /** @description Empty = every type */
            types?: ("visit.promised" | "visit.moved" | "visit.cancelled" | "visit.done" | "stopgap.recorded" | "stopgap.limit-near" | "reading.set-aside" | "document.issued" | "document.credited")[];
            /** @enum {string} */
            state?: "active" | "disabled";
        };
        /** @description For so long both secrets sign */
        WebhookRotate: {
            /**
             * Format: int32
             * @default 24
             */
            overlapHours?: number;
        };
        WebhookRetried: {
            /** Format: int64 */
            asked: number;
        };
        /** @description One page; `next` is null on the last */
        WebhookDeliveryPage: {
            items: components["schemas"]["WebhookDelivery"][];
            next: string | null;
        };
        WebhookDelivery: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            eventId: string;
            type: string;
            /** Format: date-time */
            occurredAt: string;
            /** @enum {string} */
            state: "waiting" | "delivered";
            /** Format: int64 */
            attempts: number;
            nextAttemptAt: string | null;
            lastStatus: number | null;
            lastError: string | null;
            deliveredAt: string | null;
        };
        /** @description One page; `next` is null on the last */
        CalendarAddressPage: {
            items: components["schemas"]["CalendarAddress"][];
            next: string | null;
        };
        /** @description A secret address under which a calendar can be subscribed to */
        CalendarAddress: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            name: string;
            technicianId: string | null;
            siteId: string | null;
            /** Format: date-time */
            createdAt: string;
            lastReadAt: string | null;
            revokedAt: string | null;
        };
        /** @description Whose visits the calendar shows: a technician’s or a site’s */
        CalendarAddressCreate: {
            /** @default  */
            name?: string;
            /** @default null */
            technicianId?: string | null;
            /** @default null */
            siteId?: string | null;
        };
        /** @description The path, to be put after the address of this service, is shown only once. Whoever knows it reads. */
        CalendarAddressCreated: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            name: string;
            technicianId: string | null;
            siteId: string | null;
            /** Format: date-time */
            createdAt: string;
            lastReadAt: string | null;
            revokedAt: string | null;
            path: string;
        };
        SiteContactChanges: {
            name?: string;
            /** Format: email */
            email?: string;
            /** @enum {string} */
            language?: "en" | "es";
            /** @description What this person wants to be told of */
            notices?: components["schemas"]["NoticeType"][];
        };
        /**
         * @description What a contact of a site can be told of by e-mail
         * @enum {string}
         */
        NoticeType: "visit.promised" | "visit.moved" | "visit.cancelled" | "visit.done" | "stopgap.limit-near";
        /** @description Somebody at a site, and what they are told by e-mail */
        SiteContact: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: int64
             * @description Grows with every change; the ETag carries it
             */
            version: number;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            siteId: string;
            name: string;
            email: string;
            /** @enum {string} */
            language: "en" | "es";
            notices: components["schemas"]["NoticeType"][];
        };
        SiteContactCreate: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            siteId: string;
            name: string;
            /** Format: email */
            email: string;
            /**
             * @default en
             * @enum {string}
             */
            language?: "en" | "es";
            /** @description What this person wants to be told of */
            notices: components["schemas"]["NoticeType"][];
        };
        /** @description One page; `next` is null on the last */
        SiteContactPage: {
            items: components["schemas"]["SiteContact"][];
            next: string | null;
        };
        /** @description One page; `next` is null on the last */
        NoticeList: {
            items: components["schemas"]["Notice"][];
            next: string | null;
            /** @description false: nothing is sent until the service has a mail server */
            isMailSetUp: boolean;
        };
        Notice: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            siteId: string;
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            contactId: string;
            contactName: string;
            email: string;
            type: components["schemas"]["NoticeType"];
            /**
             * Format: uuid
             * @description The visit or the stopgap
             */
            subjectId: string;
            /** Format: date-time */
            occurredAt: string;
            /**
             * @description refused = the mail server will not take it; given-up = not sent within two days; superseded = newer news of the same thing was sent instead
             * @enum {string}
             */
            state: "waiting" | "sent" | "refused" | "given-up" | "superseded";
            /** Format: int64 */
            attempts: number;
            nextAttemptAt: string | null;
            lastError: string | null;
            sentAt: string | null;
        };
        SnapshotTaken: {
            /**
             * Format: int64
             * @description Machines told of
             */
            units: number;
            /**
             * Format: int64
             * @description Readings that are new
             */
            readings: number;
            /**
             * Format: int64
             * @description Readings that were known
             */
            repeated: number;
            /**
             * Format: int64
             * @description Machines that are none of the shop’s, as far as is known
             */
            unmatched: number;
            /**
             * Format: int64
             * @description Machines whose hours cannot be used
             */
            faults: number;
        };
        /** @description One page; `next` is null on the last */
        TelematicsUnitPage: {
            items: components["schemas"]["TelematicsUnit"][];
            next: string | null;
        };
        /** @description A machine that a telematics sender told of */
        TelematicsUnit: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: int64
             * @description Grows with every change; the ETag carries it
             */
            version: number;
            maker: string | null;
            model: string | null;
            serial: string | null;
            pin: string | null;
            equipmentId: string | null;
            machineId: string | null;
            machineCode: string | null;
            /** @description hand without a machine = it is none of the shop’s */
            matchedBy: ("serial" | "label" | "hand") | null;
            /** Format: date-time */
            firstHeardAt: string;
            /** Format: date-time */
            lastHeardAt: string;
            lastHours: string | null;
            lastHoursAt: string | null;
            lastFault: string | null;
        };
        /** @description Which of the shop’s machines it is; null = none, put aside */
        TelematicsMatch: {
            machineId: string | null;
        };
        /** @description One page; `next` is null on the last */
        TelematicsSourcePage: {
            items: components["schemas"]["TelematicsSource"][];
            next: string | null;
        };
        /** @description Where ISO 15143-3 snapshots are fetched */
        TelematicsSource: {
            /**
             * Format: uuid
             * @description Identifier of a row
             */
            id: string;
            /**
             * Format: int64
             * @description Grows with every change; the ETag carries it
             */
            version: number;
            name: string;
            url: string;
            hasAuthorization: boolean;
            /** Format: int64 */
            everySeconds: number;
            /** @enum {string} */
            state: "active" | "disabled";
            lastPollAt: string | null;
            /** @description Of the last look; null = it went well */
            lastError: string | null;
            /**
             * Format: int64
             * @description Looks in a row that failed
             */
            failures: number;
            /** Format: date-time */
            createdAt: string;
        };
        TelematicsSourceCreate: {
            name: string;
            /**
             * Format: uri
             * @description First page of the fleet snapshot: https, on a public address; redirects are not followed
             */
            url: string;
            /**
             * @description Value of the Authorization header, never shown again
             * @default null
             */
            authorization?: (string & (unknown & unknown)) | null;
            /**
             * Format: int32
             * @description Seconds between two looks: not less than the sender allows
             * @default 3600
             */
            everySeconds?: number;
        };
        TelematicsSourceChanges: {
            name?: string;
            /**
             * Format: uri
             * @description First page of the fleet snapshot: https, on a public address; redirects are not followed
             */
            url?: string;
            /** @description Value of the Authorization header, never shown again */
            authorization?: (string & (unknown & unknown)) | null;
            /**
             * Format: int32
             * @description Seconds between two looks: not less than the sender allows
             */
            everySeconds?: number;
            /** @enum {string} */
            state?: "active" | "disabled";
        };
        /** @description RFC 9457 problem document */
        Problem: {
            type: string;
            title: string;
            /** Format: int64 */
            status: number;
            detail: string;
            instance: string;
            correlationId: string;
            errors?: {
                pointer: string;
                detail: string;
                clause?: components["schemas"]["Clause"];
            }[];
        };
    };
    responses: {
        /** @description Not signed in */
        SignedOut: {
            headers: {
                "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                RateLimit: components["headers"]["RateLimit"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Not allowed for this role or key */
        NotAllowed: {
            headers: {
                "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                RateLimit: components["headers"]["RateLimit"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description There is no such thing, or it is not yours to see */
        NotFound: {
            headers: {
                "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                RateLimit: components["headers"]["RateLimit"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description The label was revoked */
        Revoked: {
            headers: {
                "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                RateLimit: components["headers"]["RateLimit"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description The request cannot be read */
        Unreadable: {
            headers: {
                "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                RateLimit: components["headers"]["RateLimit"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Idempotency-Key is missing, or the request cannot be read */
        KeyMissing: {
            headers: {
                "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                RateLimit: components["headers"]["RateLimit"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description The input cannot be used */
        Unusable: {
            headers: {
                "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                RateLimit: components["headers"]["RateLimit"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description It conflicts with what is there */
        Conflict: {
            headers: {
                "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                RateLimit: components["headers"]["RateLimit"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description It was changed meanwhile */
        Stale: {
            headers: {
                "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                RateLimit: components["headers"]["RateLimit"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description If-Match is missing */
        VersionMissing: {
            headers: {
                "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                RateLimit: components["headers"]["RateLimit"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description The body is too large */
        TooLarge: {
            headers: {
                "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                RateLimit: components["headers"]["RateLimit"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Too many requests */
        TooMany: {
            headers: {
                "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                RateLimit: components["headers"]["RateLimit"];
                "Retry-After": components["headers"]["RetryAfter"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Something went wrong here */
        Failed: {
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
    headers: {
        /** @description How many requests a minute this caller may send, as `"per-minute";q=600;w=60` */
        RateLimitPolicy: string;
        /** @description How many it may still send at once, and seconds until all may be sent again, as `"per-minute";r=598;t=1` */
        RateLimit: string;
        /** @description Seconds to wait before asking again */
        RetryAfter: number;
    };
    pathItems: never;
}
export type $defs = Record<string, never>;
export interface operations {
    Health_health: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The process runs */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Health"];
                };
            };
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Health_ready: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Everything it needs answers (503 otherwise, with the same body) */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Readiness"];
                };
            };
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Access_myself: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Who this token belongs to */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Myself"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Access_signIn: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "email": "manager@small-shop.example",
                 *       "password": "a long enough password"
                 *     }
                 */
                "application/json": components["schemas"]["SignIn"];
            };
        };
        responses: {
            /** @description Signed in */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SignedIn"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Access_signOut: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Signed out; the token is of no more use */
            204: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    People_people: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Everyone who can sign in */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PersonPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    People_addPerson: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "name": "Avens Holt",
                 *       "email": "a.holt@sedge-trust.example",
                 *       "role": "supervisor",
                 *       "password": "correct horse battery staple",
                 *       "siteIds": [
                 *         "5a3f0c1e-0000-4000-8000-000000000002"
                 *       ]
                 *     }
                 */
                "application/json": components["schemas"]["PersonCreate"];
            };
        };
        responses: {
            /** @description Can sign in now; somebody who was removed is back */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Person"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    People_disable: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Can no longer sign in; running sign-ins and calendars the person opened have ended, and the technician is free for somebody else */
            204: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    People_changePerson: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that was read */
                "If-Match": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "name": "Avens Holt-Reed",
                 *       "password": "wrong pony capacitor clip"
                 *     }
                 */
                "application/json": components["schemas"]["PersonChanges"];
            };
        };
        responses: {
            /** @description The person as it stands now */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Person"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            412: components["responses"]["Stale"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            428: components["responses"]["VersionMissing"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    People_keys: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Keys for other systems */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["IntegrationKeyPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    People_addKey: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "name": "ledger",
                 *       "scopes": [
                 *         "accounting"
                 *       ],
                 *       "expiresAt": "2027-12-31T00:00:00Z",
                 *       "requestsPerMinute": 120
                 *     }
                 */
                "application/json": components["schemas"]["IntegrationKeyCreate"];
            };
        };
        responses: {
            /** @description The key, shown only this once */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["IntegrationKeyCreated"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    People_revoke: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The key is of no more use */
            204: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Shop_read: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The shop; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Shop"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Shop_change: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that was read */
                "If-Match": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "timeZone": "America/Chicago",
                 *       "units": "us"
                 *     }
                 */
                "application/json": components["schemas"]["ShopChanges"];
            };
        };
        responses: {
            /** @description The shop as it stands now */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Shop"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            412: components["responses"]["Stale"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            428: components["responses"]["VersionMissing"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    DemoShop_open: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A sign-in as manager of an invented shop, made at the first call and apart from one’s own */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SignedIn"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Customer_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The row; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Customer"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Customer_change: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that was read */
                "If-Match": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "termsDays": 14
                 *     }
                 */
                "application/json": components["schemas"]["CustomerChanges"];
            };
        };
        responses: {
            /** @description The changed customer */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Customer"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            412: components["responses"]["Stale"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            428: components["responses"]["VersionMissing"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Customer_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list, ordered by code */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CustomerPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Customer_add: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "code": "C77",
                 *       "name": "Sedge Trust",
                 *       "billingEmail": "bills@sedge-trust.example",
                 *       "termsDays": 30
                 *     }
                 */
                "application/json": components["schemas"]["CustomerCreate"];
            };
        };
        responses: {
            /** @description A new customer */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Customer"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Site_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The row; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Site"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Site_change: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that was read */
                "If-Match": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "access": [
                 *         {
                 *           "weekday": 2,
                 *           "from": "07:00",
                 *           "to": "15:30"
                 *         },
                 *         {
                 *           "weekday": 4,
                 *           "from": "07:00",
                 *           "to": "12:00"
                 *         }
                 *       ]
                 *     }
                 */
                "application/json": components["schemas"]["SiteChanges"];
            };
        };
        responses: {
            /** @description The changed site */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Site"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            412: components["responses"]["Stale"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            428: components["responses"]["VersionMissing"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Site_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                customerId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list, ordered by code */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SitePage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Site_add: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "code": "S77",
                 *       "customerId": "5a3f0c1e-0000-4000-8000-000000000001",
                 *       "name": "Sedge Lake cemetery",
                 *       "latitude": 41.62,
                 *       "longitude": -93.71,
                 *       "timeZone": "America/Chicago",
                 *       "access": [
                 *         {
                 *           "weekday": 2,
                 *           "from": "07:00",
                 *           "to": "15:30"
                 *         }
                 *       ],
                 *       "setupMinutes": 10,
                 *       "maxMachinesDown": 1,
                 *       "gateNotes": "Gate on the north side; close it behind you"
                 *     }
                 */
                "application/json": components["schemas"]["SiteCreate"];
            };
        };
        responses: {
            /** @description A new site */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Site"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Blackout_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The row; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Blackout"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Blackout_remove: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description It is gone */
            204: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Blackout_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                siteId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list, ordered by fromDate */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BlackoutPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Blackout_add: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "siteId": "5a3f0c1e-0000-4000-8000-000000000002",
                 *       "from": "2026-09-07",
                 *       "to": "2026-09-08",
                 *       "reason": "memorial"
                 *     }
                 */
                "application/json": components["schemas"]["BlackoutCreate"];
            };
        };
        responses: {
            /** @description A new blackout */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Blackout"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    MachineClass_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list, ordered by code */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MachineClassPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    MachineClass_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The row; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MachineClass"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Machine_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The row; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Machine"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Machine_change: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that was read */
                "If-Match": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "condition": "down",
                 *       "notes": "left spindle locked",
                 *       "retiredOn": "2031-10-31"
                 *     }
                 */
                "application/json": components["schemas"]["MachineChanges"];
            };
        };
        responses: {
            /** @description The changed machine */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Machine"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            412: components["responses"]["Stale"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            428: components["responses"]["VersionMissing"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Machine_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                siteId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list, ordered by code */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MachinePage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Machine_add: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "code": "M77",
                 *       "siteId": "5a3f0c1e-0000-4000-8000-000000000002",
                 *       "machineClass": "zero-turn",
                 *       "serial": "SN-0077",
                 *       "inServiceOn": "2025-04-01",
                 *       "spindles": 3,
                 *       "severity": "severe",
                 *       "meterRolloverHours": "10000"
                 *     }
                 */
                "application/json": components["schemas"]["MachineCreate"];
            };
        };
        responses: {
            /** @description A new machine */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Machine"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    ServiceItem_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The row; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ServiceItem"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    ServiceItem_change: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that was read */
                "If-Match": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "intervalHours": "40",
                 *       "toleranceHours": "8",
                 *       "minutes": 35
                 *     }
                 */
                "application/json": components["schemas"]["ServiceItemChanges"];
            };
        };
        responses: {
            /** @description The changed serviceitem */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ServiceItem"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            412: components["responses"]["Stale"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            428: components["responses"]["VersionMissing"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    ServiceItem_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                machineClass?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list, ordered by code */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ServiceItemPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Import_check: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "files": {
                 *         "customers.csv": "customer_id,name,billing_email,terms_days,tax_exempt\nC78,Rush Parks,,30,no\n",
                 *         "sites.csv": "site_id,customer_id,name,latitude,longitude,access,setup_minutes,max_machines_down,notes\nS78,C78,Rush Park,41.6,-93.7,Mon-Fri 07:00-15:30,10,1,\n",
                 *         "machines.csv": "machine_id,site_id,class,maker,model,serial,in_service_on,spindles,severity,notes\nM78,S78,zero-turn,,,SN-0078,2025-04-01,3,normal,\n",
                 *         "readings.csv": "machine_id,read_at,hours,source\nM78,2026-05-29 15:00,120.5,technician\n",
                 *         "meter_changes.csv": "machine_id,changed_at,old_hours,new_hours\n",
                 *         "service_history.csv": "machine_id,item,slot,done_at,hours,outcome,part\n",
                 *         "technicians.csv": "technician_id,name,base_latitude,base_longitude,shifts,skills,wage_per_hour,overtime_per_hour,max_overtime_minutes\n",
                 *         "parts.csv": "part_id,description,designation,unit_price,unit_cost,on_hand,lead_days\n"
                 *       }
                 *     }
                 */
                "application/json": components["schemas"]["RegisterFiles"];
            };
        };
        responses: {
            /** @description What importing these files would do, fault by fault; nothing is changed */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RegisterPreview"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    RegisterImport_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list, ordered by importedAt */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RegisterImportPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Import_import: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "files": {
                 *         "customers.csv": "customer_id,name,billing_email,terms_days,tax_exempt\nC78,Rush Parks,,30,no\n",
                 *         "sites.csv": "site_id,customer_id,name,latitude,longitude,access,setup_minutes,max_machines_down,notes\nS78,C78,Rush Park,41.6,-93.7,Mon-Fri 07:00-15:30,10,1,\n",
                 *         "machines.csv": "machine_id,site_id,class,maker,model,serial,in_service_on,spindles,severity,notes\nM78,S78,zero-turn,,,SN-0078,2025-04-01,3,normal,\n",
                 *         "readings.csv": "machine_id,read_at,hours,source\nM78,2026-05-29 15:00,120.5,technician\n",
                 *         "meter_changes.csv": "machine_id,changed_at,old_hours,new_hours\n",
                 *         "service_history.csv": "machine_id,item,slot,done_at,hours,outcome,part\n",
                 *         "technicians.csv": "technician_id,name,base_latitude,base_longitude,shifts,skills,wage_per_hour,overtime_per_hour,max_overtime_minutes\n",
                 *         "parts.csv": "part_id,description,designation,unit_price,unit_cost,on_hand,lead_days\n"
                 *       }
                 *     }
                 */
                "application/json": components["schemas"]["RegisterFiles"];
            };
        };
        responses: {
            /** @description Imported: new rows added, differing ones changed, none removed */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RegisterPreview"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    MachineOverride_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The row; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MachineOverride"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    MachineOverride_remove: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description It is gone */
            204: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    MachineOverride_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                machineId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list, ordered by id */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MachineOverridePage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    MachineOverride_add: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "machineId": "5a3f0c1e-0000-4000-8000-000000000003",
                 *       "itemId": "5a3f0c1e-0000-4000-8000-000000000005",
                 *       "intervalHours": "30",
                 *       "note": "sandy ground"
                 *     }
                 */
                "application/json": components["schemas"]["MachineOverrideCreate"];
            };
        };
        responses: {
            /** @description A new machineoverride */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MachineOverride"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    ComponentSlot_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                machineId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list, ordered by name */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ComponentSlotPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    ComponentSlot_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The row; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ComponentSlot"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    ComponentLife_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                slotId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list, ordered by id */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ComponentLifePage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    ComponentLife_add: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "slotId": "5a3f0c1e-0000-4000-8000-000000000007",
                 *       "partId": "5a3f0c1e-0000-4000-8000-000000000006",
                 *       "fittedOn": "2025-05-02",
                 *       "fittedHours": "210.5",
                 *       "removedOn": "2026-05-20",
                 *       "removedHours": "498",
                 *       "removalReason": "failed",
                 *       "bearingFeel": "rough",
                 *       "debrisWrap": "wire",
                 *       "greaseLook": "dry"
                 *     }
                 */
                "application/json": components["schemas"]["ComponentLifeCreate"];
            };
        };
        responses: {
            /** @description A new componentlife */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ComponentLife"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    ComponentLife_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The row; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ComponentLife"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    RegisterImport_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The row; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RegisterImport"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Technician_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The row; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Technician"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Technician_change: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that was read */
                "If-Match": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "skills": [
                 *         "mechanical",
                 *         "hydraulic"
                 *       ]
                 *     }
                 */
                "application/json": components["schemas"]["TechnicianChanges"];
            };
        };
        responses: {
            /** @description The changed technician */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Technician"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            412: components["responses"]["Stale"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            428: components["responses"]["VersionMissing"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Technician_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list, ordered by code */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TechnicianPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Technician_add: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "code": "T77",
                 *       "name": "Sorrel Finch",
                 *       "baseLatitude": 41.6,
                 *       "baseLongitude": -93.6,
                 *       "timeZone": "America/Chicago",
                 *       "shifts": [
                 *         {
                 *           "weekday": 1,
                 *           "from": "07:00",
                 *           "to": "16:00"
                 *         }
                 *       ],
                 *       "skills": [
                 *         "mechanical"
                 *       ],
                 *       "wageCentsPerHour": 3400,
                 *       "overtimeCentsPerHour": 5100
                 *     }
                 */
                "application/json": components["schemas"]["TechnicianCreate"];
            };
        };
        responses: {
            /** @description A new technician */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Technician"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Absence_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The row; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Absence"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Absence_remove: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description It is gone */
            204: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Absence_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                technicianId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list, ordered by fromDate */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AbsencePage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Absence_add: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "technicianId": "5a3f0c1e-0000-4000-8000-000000000004",
                 *       "from": "2026-07-06",
                 *       "to": "2026-07-10",
                 *       "reason": "holiday"
                 *     }
                 */
                "application/json": components["schemas"]["AbsenceCreate"];
            };
        };
        responses: {
            /** @description A new absence */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Absence"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    MachineMove_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The row; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MachineMove"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    MachineMove_remove: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description It is gone */
            204: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    MachineMove_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                machineId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list, ordered by untilDate */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MachineMovePage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    MachineMove_add: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "machineId": "5a3f0c1e-0000-4000-8000-000000000003",
                 *       "fromSiteId": "5a3f0c1e-0000-4000-8000-000000000012",
                 *       "until": "2026-04-30"
                 *     }
                 */
                "application/json": components["schemas"]["MachineMoveCreate"];
            };
        };
        responses: {
            /** @description A new machinemove */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MachineMove"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Travel_learn: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "drives": [
                 *         {
                 *           "from": {
                 *             "latitude": 41.6,
                 *             "longitude": -93.6
                 *           },
                 *           "to": {
                 *             "latitude": 41.65,
                 *             "longitude": -93.6
                 *           },
                 *           "minutes": 14,
                 *           "metres": 7200
                 *         }
                 *       ],
                 *       "apply": false
                 *     }
                 */
                "application/json": components["schemas"]["TravelLearn"];
            };
        };
        responses: {
            /** @description Settings after the drives, taken over where that was asked for */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TravelLearned"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Weather_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Days of weather, in order of date */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WeatherDayPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Weather_keep: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "days": [
                 *         {
                 *           "siteId": null,
                 *           "date": "2026-05-30",
                 *           "lowC": 11.5,
                 *           "highC": 23,
                 *           "rainMm": 4.2
                 *         }
                 *       ]
                 *     }
                 */
                "application/json": components["schemas"]["WeatherCreate"];
            };
        };
        responses: {
            /** @description The days are kept; a day that was there before has the new values */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WeatherKept"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Part_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The row; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Part"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Part_change: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that was read */
                "If-Match": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "leadDays": 5
                 *     }
                 */
                "application/json": components["schemas"]["PartChanges"];
            };
        };
        responses: {
            /** @description The changed part */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Part"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            412: components["responses"]["Stale"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            428: components["responses"]["VersionMissing"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Part_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list, ordered by code */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PartPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Part_add: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "code": "BRG-6205-2RS",
                 *       "description": "deep groove ball bearing, two seals",
                 *       "designation": "6205-2RS",
                 *       "unitPriceCents": 1690,
                 *       "unitCostCents": 820,
                 *       "leadDays": 3,
                 *       "onHand": "6"
                 *     }
                 */
                "application/json": components["schemas"]["PartCreate"];
            };
        };
        responses: {
            /** @description A new part */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Part"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    PartOrder_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The row; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PartOrder"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    PartOrder_change: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that was read */
                "If-Match": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "receivedOn": "2026-06-08",
                 *       "receivedQuantity": "3",
                 *       "expectedOn": "2026-06-12"
                 *     }
                 */
                "application/json": components["schemas"]["PartOrderChanges"];
            };
        };
        responses: {
            /** @description The changed partorder */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PartOrder"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            412: components["responses"]["Stale"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            428: components["responses"]["VersionMissing"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    PartOrder_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                partId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list, ordered by expectedOn */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PartOrderPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    PartOrder_add: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "partId": "5a3f0c1e-0000-4000-8000-000000000006",
                 *       "quantity": "4",
                 *       "orderedOn": "2026-06-05",
                 *       "expectedOn": "2026-06-09"
                 *     }
                 */
                "application/json": components["schemas"]["PartOrderCreate"];
            };
        };
        responses: {
            /** @description A new partorder */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PartOrder"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Deliveries_takeBack: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "quantity": "1",
                 *       "reason": "counted twice: the box was the one of the day before"
                 *     }
                 */
                "application/json": components["schemas"]["DeliveryTakenBack"];
            };
        };
        responses: {
            /** @description What was received by mistake is off the shelf, and still to come */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PartOrder"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    PartsTakenBack_takeBack: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "because": "other-part",
                 *       "reason": "the belt of the next machine"
                 *     }
                 */
                "application/json": components["schemas"]["PartTakenBack"];
            };
        };
        responses: {
            /** @description The used part as it was: it counts no more, and lies in stock again */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PartUse"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Agreement_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The row; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Agreement"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Agreement_remove: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description It is gone */
            204: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Agreement_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                customerId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list, ordered by startsOn */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AgreementPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Agreement_add: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "customerId": "5a3f0c1e-0000-4000-8000-000000000001",
                 *       "name": "Season 2026",
                 *       "startsOn": "2026-03-01",
                 *       "endsOn": "2026-11-30",
                 *       "responseHours": 48,
                 *       "items": [
                 *         {
                 *           "itemCode": "sharpen-blades",
                 *           "included": true,
                 *           "yearlyAllowance": 6
                 *         }
                 *       ]
                 *     }
                 */
                "application/json": components["schemas"]["AgreementCreate"];
            };
        };
        responses: {
            /** @description A new agreement */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Agreement"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Readings_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                machineId?: string;
                status?: "accepted" | "set-aside";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Readings in order of time */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReadingPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Readings_record: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "readings": [
                 *         {
                 *           "machineId": "5a3f0c1e-0000-4000-8000-000000000003",
                 *           "readAt": "2026-06-03T10:15:00-05:00",
                 *           "hours": "412.6",
                 *           "source": "manager"
                 *         }
                 *       ]
                 *     }
                 */
                "application/json": components["schemas"]["ReadingsCreate"];
            };
        };
        responses: {
            /** @description Each reading as it stands now, accepted or set aside with its reason */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReadingsTaken"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Readings_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The reading; its ETag is needed to decide on it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Reading"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Readings_decide: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that was read */
                "If-Match": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "decision": "correct",
                 *       "hours": "412.6",
                 *       "reason": "the decimal point had slipped"
                 *     }
                 */
                "application/json": components["schemas"]["ReadingDecision"];
            };
        };
        responses: {
            /** @description A person has decided; the decision is not revisited by later readings */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Reading"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            412: components["responses"]["Stale"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            428: components["responses"]["VersionMissing"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Readings_decisions: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
            };
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What persons decided about it, first to last */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReadingDecisionMadePage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    MachineLabels_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                siteId?: string;
                /** @description Identifier of a row */
                machineId?: string;
                revoked?: "true" | "false";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Labels in order of making */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MachineLabelPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    MachineLabels_make: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "machineId": "5a3f0c1e-0000-4000-8000-000000000003"
                 *     }
                 */
                "application/json": components["schemas"]["MachineLabelCreate"];
            };
        };
        responses: {
            /** @description The labels of these machines; those that had none have a new one */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MachineLabels"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    MachineLabels_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Identifier of a label: 26 characters of Crockford base32 */
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Whose label it is: for those who scan it signed in */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MachineLabel"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    MachineLabels_revoke: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Identifier of a label: 26 characters of Crockford base32 */
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Whoever scans it is refused from now on */
            204: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    MachineLabels_sheet: {
        parameters: {
            query?: {
                format?: "letter-30" | "letter-10" | "a4-24";
                /** @description Only the label of this machine */
                machineId?: string;
                /** @description First free place of a used sheet */
                start?: number;
                /** @description Millimetres that the printer has to be moved to the right */
                offsetX?: number;
                /** @description Millimetres that the printer has to be moved down */
                offsetY?: number;
            };
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description To be printed at 100 % on label paper; made labels only */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/pdf": string;
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Labels_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Identifier of a label: 26 characters of Crockford base32 */
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The machine by name, and its last reading. The label’s id is all that is needed. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LabelledMachine"];
                };
            };
            404: components["responses"]["NotFound"];
            410: components["responses"]["Revoked"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Labels_record: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path: {
                /** @description Identifier of a label: 26 characters of Crockford base32 */
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "readAt": "2026-06-04T08:30:00-05:00",
                 *       "hours": "415.2"
                 *     }
                 */
                "application/json": components["schemas"]["LabelReadingCreate"];
            };
        };
        responses: {
            /** @description The reading is kept; a doubtful one is set aside for the shop to look at */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LabelReadingTaken"];
                };
            };
            400: components["responses"]["KeyMissing"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            410: components["responses"]["Revoked"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    MeterChange_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The row; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MeterChange"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    MeterChange_remove: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description It is gone */
            204: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    MeterChange_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                machineId?: string;
                origin?: "told" | "found";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list, ordered by changedOn */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MeterChangePage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    MeterChange_add: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "machineId": "5a3f0c1e-0000-4000-8000-000000000003",
                 *       "changedOn": "2026-05-04",
                 *       "oldHours": "498",
                 *       "newHours": "0"
                 *     }
                 */
                "application/json": components["schemas"]["MeterChangeCreate"];
            };
        };
        responses: {
            /** @description A new meterchange */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MeterChange"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Completion_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The row; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Completion"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Completion_remove: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description It is gone */
            204: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Completion_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                machineId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list, ordered by doneOn */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CompletionPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Completion_add: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "machineId": "5a3f0c1e-0000-4000-8000-000000000003",
                 *       "itemCode": "sharpen-blades",
                 *       "doneOn": "2026-06-03",
                 *       "meterHours": "412.6"
                 *     }
                 */
                "application/json": components["schemas"]["CompletionCreate"];
            };
        };
        responses: {
            /** @description A new completion */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Completion"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Finding_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                machineId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list, ordered by foundOn */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FindingPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Finding_add: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "machineId": "5a3f0c1e-0000-4000-8000-000000000003",
                 *       "itemCode": "inspect-belts",
                 *       "foundOn": "2026-06-03",
                 *       "observation": "belt frayed at the edge",
                 *       "dueWithinHours": "20"
                 *     }
                 */
                "application/json": components["schemas"]["FindingCreate"];
            };
        };
        responses: {
            /** @description A new finding */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Finding"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Finding_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The row; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Finding"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Stopgap_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The row; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Stopgap"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Stopgap_change: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that was read */
                "If-Match": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "partExpectedOn": "2026-06-10"
                 *     }
                 */
                "application/json": components["schemas"]["StopgapChanges"];
            };
        };
        responses: {
            /** @description The changed stopgap */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Stopgap"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            412: components["responses"]["Stale"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            428: components["responses"]["VersionMissing"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Stopgap_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                machineId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list, ordered by madeOn */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StopgapPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Stopgap_add: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "machineId": "5a3f0c1e-0000-4000-8000-000000000003",
                 *       "description": "idler bracket spliced with a plate",
                 *       "madeOn": "2026-06-03",
                 *       "limitHours": "20",
                 *       "partId": "5a3f0c1e-0000-4000-8000-000000000006",
                 *       "partExpectedOn": "2026-06-09",
                 *       "minutes": 45
                 *     }
                 */
                "application/json": components["schemas"]["StopgapCreate"];
            };
        };
        responses: {
            /** @description A new stopgap */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Stopgap"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    FollowUp_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                machineId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list, ordered by id */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FollowUpPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    FollowUp_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The row; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FollowUp"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    RoadCall_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The row; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RoadCall"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    RoadCall_change: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that was read */
                "If-Match": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "downCentsPerDay": 20000
                 *     }
                 */
                "application/json": components["schemas"]["RoadCallChanges"];
            };
        };
        responses: {
            /** @description The changed roadcall */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RoadCall"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            412: components["responses"]["Stale"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            428: components["responses"]["VersionMissing"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    RoadCall_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                machineId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list, ordered by calledAt */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RoadCallPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    RoadCall_add: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "machineId": "5a3f0c1e-0000-4000-8000-000000000003",
                 *       "calledAt": "2026-06-08T09:40:00-05:00",
                 *       "symptom": "howls under load",
                 *       "symptomCode": "bearing-noise",
                 *       "answers": {
                 *         "which-spindle": "left"
                 *       },
                 *       "usable": false
                 *     }
                 */
                "application/json": components["schemas"]["RoadCallCreate"];
            };
        };
        responses: {
            /** @description A new roadcall */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RoadCall"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    StopgapDecisions_renew: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "limitHours": "40",
                 *       "limitOn": null,
                 *       "reason": "the plate was bolted on again and holds"
                 *     }
                 */
                "application/json": components["schemas"]["StopgapRenewal"];
            };
        };
        responses: {
            /** @description The stopgap with its new limit; a forecast that goes by it is asked for */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Stopgap"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    StopgapDecisions_close: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "because": "done-otherwise",
                 *       "reason": "the site welded a new bracket on"
                 *     }
                 */
                "application/json": components["schemas"]["StopgapClose"];
            };
        };
        responses: {
            /** @description The closed stopgap: its return is owed no more, and stands in no visit to come */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Stopgap"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    FieldDay_read: {
        parameters: {
            query?: {
                /** @description Left out = today, or the planned day that is nearest */
                date?: string;
                /** @description Left out = the technician that the caller is */
                technicianId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The day, whole */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FieldDay"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Papers_week: {
        parameters: {
            query: {
                /** @description Local date, YYYY-MM-DD */
                weekOf: string;
                days?: number;
                /** @description Language of the headings */
                language?: "en" | "es";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Load lists of the week, a page or more for each technician-day with visits */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/pdf": string;
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Papers_loadList: {
        parameters: {
            query?: {
                /** @description Left out = today, or the planned day that is nearest */
                date?: string;
                /** @description Left out = the technician that the caller is */
                technicianId?: string;
                /** @description Language of the headings */
                language?: "en" | "es";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What goes into the van on one day of a technician */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/pdf": string;
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Papers_visitSheet: {
        parameters: {
            query?: {
                /** @description Language of the headings */
                language?: "en" | "es";
            };
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description One visit: machines with hours, cautions, steps and torque, and room to write */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/pdf": string;
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    FieldRecords_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                visitId?: string;
                /** @description Identifier of a row */
                machineId?: string;
                state?: "applied" | "review" | "accepted" | "dismissed";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Records in the order in which they arrived */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FieldRecordPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    FieldRecords_record: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "id": "5a3f0c1e-0000-4000-8000-000000000010",
                 *       "deviceAt": "2026-06-08T10:05:00-05:00",
                 *       "sentAt": "2026-06-08T12:40:00-05:00",
                 *       "machineId": "5a3f0c1e-0000-4000-8000-000000000003",
                 *       "fact": {
                 *         "kind": "found-work",
                 *         "title": "discharge chute hinge loose",
                 *         "minutes": 10,
                 *         "done": false
                 *       }
                 *     }
                 */
                "application/json": components["schemas"]["FieldRecordCreate"];
            };
        };
        responses: {
            /** @description Recorded, once however often it is sent; a late one waits in review */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FieldRecord"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    FieldRecords_decide: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that was read */
                "If-Match": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "decision": "accept"
                 *     }
                 */
                "application/json": components["schemas"]["FieldRecordDecision"];
            };
        };
        responses: {
            /** @description The late record counts now, or is kept without effect */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FieldRecord"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            412: components["responses"]["Stale"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            428: components["responses"]["VersionMissing"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    PartUse_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                visitId?: string;
                /** @description Identifier of a row */
                machineId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list, ordered by usedAt */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PartUsePage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    PartUse_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The row; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PartUse"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    WorkTime_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                visitId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list, ordered by startedAt */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WorkTimePage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    WorkTime_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The row; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WorkTime"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Photos_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                machineId?: string;
                /** @description Identifier of a row */
                visitId?: string;
                /** @description Identifier of a row */
                roadCallId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Photos in order of time */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PhotoPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Photos_keep: {
        parameters: {
            query: {
                /** @description Identifier of a row */
                machineId: string;
                takenAt: string;
                /** @description Identifier of a row */
                visitId?: string;
                /** @description Identifier of a row */
                roadCallId?: string;
            };
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        /** @description The picture: JPEG, PNG or WebP, at most 4 MiB */
        requestBody: {
            content: {
                "image/jpeg": string;
                "image/png": string;
                "image/webp": string;
            };
        };
        responses: {
            /** @description Kept, under the id that the device made: sent again, it is kept once */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Photo"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Photos_image: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The picture */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "image/jpeg": unknown;
                    "image/png": unknown;
                    "image/webp": unknown;
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Due_due: {
        parameters: {
            query?: {
                /** @description Identifier of a row */
                siteId?: string;
                /** @description Identifier of a row */
                machineId?: string;
                code?: string;
                kind?: "service" | "stopgap";
                /** @description Local date, YYYY-MM-DD */
                until?: string;
                overdueAtLeast?: number;
                cursor?: string;
                limit?: number;
                order?: "date" | "cost" | "site";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What falls due, in the order asked for */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DueItemPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Due_summary: {
        parameters: {
            query?: {
                /** @description Identifier of a row */
                siteId?: string;
                /** @description Identifier of a row */
                machineId?: string;
                code?: string;
                kind?: "service" | "stopgap";
                /** @description Local date, YYYY-MM-DD */
                until?: string;
                overdueAtLeast?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description How much falls due */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DueSummary"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Due_usage: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description How many hours the machine will have run */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["UsageForecast"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Due_askForecast: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "asOf": "2026-06-07",
                 *       "costFrom": "2026-06-08",
                 *       "costDays": 14
                 *     }
                 */
                "application/json": components["schemas"]["ForecastRunCreate"];
            };
        };
        responses: {
            /** @description The forecast is asked for; read it again to see it done */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ForecastRun"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Due_forecastRun: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Where the forecast stands */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ForecastRun"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    ForecastQuality_ofShop: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description How good our forecasts were, by days ahead, from the shop’s own readings */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ForecastQuality"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Lives_lives: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Part code, e.g. BRG-6205-2Z */
                part?: string;
                /** @description Slot name, e.g. spindle 2 */
                slot?: string;
                machineClass?: string;
                /** @description Identifier of a row */
                siteId?: string;
                severity?: "light" | "normal" | "severe";
                /** @description true leaves out first parts, whose fitting nobody recorded */
                knownFittingOnly?: "true" | "false";
                itemCode?: string;
                /** @description Identifier of a row */
                machineId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Every stay of a part in a slot, from the shop’s history */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PartLifePage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Lives_fit: {
        parameters: {
            query?: {
                /** @description Part code, e.g. BRG-6205-2Z */
                part?: string;
                /** @description Slot name, e.g. spindle 2 */
                slot?: string;
                machineClass?: string;
                /** @description Identifier of a row */
                siteId?: string;
                severity?: "light" | "normal" | "severe";
                /** @description true leaves out first parts, whose fitting nobody recorded */
                knownFittingOnly?: "true" | "false";
                /** @description Service item that replaces the part */
                itemCode?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description How long parts last: survival points, fitted curve, figures with intervals */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LifeFit"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Lives_parts: {
        parameters: {
            query?: {
                /** @description Service item that replaces the part */
                itemCode?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Which parts a service item fitted, the most often fitted first */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PartsOnRecord"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Lives_grades: {
        parameters: {
            query: {
                /** @description Service item that replaces the part */
                itemCode?: string;
                /** @description Part code that is asked about */
                first: string;
                /** @description Part code that it is held against */
                second: string;
                machineClass?: string;
                /** @description Identifier of a row */
                siteId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Which of two part grades lasts longer in this shop */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["GradeComparison"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Lives_replacementAge: {
        parameters: {
            query: {
                /** @description Service item that replaces the part */
                itemCode?: string;
                machineClass: string;
                /** @description Default: the item’s own interval */
                currentHours?: number;
                plannedCents?: number;
                failedCents?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description When replacing beats waiting, and what the current interval costs against it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReplacementAge"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Lives_blockReplacement: {
        parameters: {
            query: {
                /** @description Service item that replaces the part */
                itemCode?: string;
                machineClass: string;
                /** @description Default: as planned */
                plannedCents?: number;
                /** @description A repair between replacements that makes it run again without renewing it */
                minimalRepairCents: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Replacing at a fixed beat of hours, whatever was repaired in between */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BlockReplacement"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Lives_stopgap: {
        parameters: {
            query?: {
                /** @description Service item that replaces the part */
                itemCode?: string;
                machineClass?: string;
                ageHours?: number;
                hoursAhead?: number;
                lifeShareLow?: number;
                lifeShareHigh?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Chance that new parts on a worn seat fail within some hours */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StopgapRisk"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Bearings_bearingLife: {
        parameters: {
            query: {
                /** @description ISO 15 designation, e.g. 6205-2Z */
                designation: string;
                engineRpm?: number;
                /** @description Pitch diameter on the engine, any unit */
                drivePulley?: number;
                /** @description Pitch diameter on the spindle, same unit */
                drivenPulley?: number;
                /** @description Belt tension in each strand, N */
                strandTensionN?: number;
                wrapDegrees?: number;
                /** @description Blade imbalance, g mm */
                imbalanceGramMm?: number;
                axialN?: number;
                bearingDistanceMm?: number;
                pulleyOverhangMm?: number;
                bladeOverhangMm?: number;
                reliabilityPercent?: number;
                contamination?: "clean" | "normal" | "dirty" | "severe";
                /** @description Dynamic rating C when the maker’s differs */
                ratingN?: number;
                staticRatingN?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description ISO 281 rating life of a spindle’s two bearings */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BearingLife"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Bearings_inspection: {
        parameters: {
            query: {
                defectsPerThousandHours: number;
                /** @description From a defect that can be seen to the failure it becomes */
                meanDelayHours: number;
                failureCents: number;
                /** @description Repair of a defect found in time */
                foundCents: number;
                inspectionCents: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description How often to look for defects that announce a failure */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["InspectionInterval"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Bearings_checks: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                machineId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Blade tip speeds that were checked */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SpeedCheckPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Bearings_check: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "machineId": "5a3f0c1e-0000-4000-8000-000000000003",
                 *       "bladeInches": 20.5,
                 *       "engineRpm": 3600,
                 *       "drivePulley": 150,
                 *       "drivenPulley": 180
                 *     }
                 */
                "application/json": components["schemas"]["SpeedCheckCreate"];
            };
        };
        responses: {
            /** @description Checks blade tip speed and records it; a warning blocks nothing */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SpeedCheck"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    MachineRecords_machines: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                machineClass?: string;
                /** @description Identifier of a row */
                siteId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Machines by repair cost per hour, the dearest first */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MachineRecordPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    MachineRecords_machine: {
        parameters: {
            query?: {
                newPriceCents?: number;
                resaleNowCents?: number;
                resaleInAYearCents?: number;
                newLifeHours?: number;
                hoursNextYear?: number;
            };
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description One machine’s repairs, their trend, and whether it is past repairing */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MachineAdvice"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    MachineRecords_cumulative: {
        parameters: {
            query?: {
                of?: "repairs" | "cents";
                machineClass?: string;
                /** @description Identifier of a row */
                siteId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Mean repairs or cents per machine by machine hours */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MeanCumulative"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Proposals_refit: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Asks for a re-fit of all lives now; one runs each month by itself */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LifeRun"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Proposals_run: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description How far a re-fit is */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LifeRun"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Proposals_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                state?: "proposed" | "accepted" | "refused" | "reversed" | "superseded";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Interval changes proposed and what became of them */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["IntervalProposalPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Proposals_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The proposal with its evidence; its ETag is needed to decide */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["IntervalProposal"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Proposals_accept: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that was read */
                "If-Match": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "note": "wet ground since the drains were laid"
                 *     }
                 */
                "application/json": components["schemas"]["ProposalDecision"];
            };
        };
        responses: {
            /** @description Accepts it: the item’s interval changes from today on */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["IntervalProposal"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            412: components["responses"]["Stale"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            428: components["responses"]["VersionMissing"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Proposals_refuse: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that was read */
                "If-Match": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "note": "one bad batch, returned"
                 *     }
                 */
                "application/json": components["schemas"]["ProposalDecision"];
            };
        };
        responses: {
            /** @description Refuses it; the same change is not proposed again */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["IntervalProposal"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            412: components["responses"]["Stale"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            428: components["responses"]["VersionMissing"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Proposals_reverse: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that was read */
                "If-Match": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "note": "more belts shed than before"
                 *     }
                 */
                "application/json": components["schemas"]["ProposalDecision"];
            };
        };
        responses: {
            /** @description Takes an accepted change back: the interval is what it was before */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["IntervalProposal"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            412: components["responses"]["Stale"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            428: components["responses"]["VersionMissing"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    FailureCause_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                machineId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list, ordered by happenedOn */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FailureCausePage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    FailureCause_add: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "machineId": "5a3f0c1e-0000-4000-8000-000000000003",
                 *       "happenedOn": "2026-05-20",
                 *       "rootCause": "wire wrapped around two spindles",
                 *       "completionIds": [
                 *         "5a3f0c1e-0000-4000-8000-000000000009"
                 *       ]
                 *     }
                 */
                "application/json": components["schemas"]["FailureCauseCreate"];
            };
        };
        responses: {
            /** @description A new failurecause */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FailureCause"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    FailureCause_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The row; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FailureCause"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Plans_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Plan runs in order of asking */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanRunPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Plans_ask: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "weekOf": "2026-06-08",
                 *       "days": 7,
                 *       "iterations": 2000,
                 *       "seed": 1
                 *     }
                 */
                "application/json": components["schemas"]["PlanRunCreate"];
            };
        };
        responses: {
            /** @description The plan is asked for; watch its progress */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanRun"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Plans_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Where the plan run stands */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanRun"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Plans_cancel: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The search stops within a moment and keeps the best plan it has; weeks that were to follow are not begun */
            202: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanRun"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Plans_progress: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Server-sent events `progress` (the plan run) until `end` */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "text/event-stream": string;
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Plans_difference: {
        parameters: {
            query: {
                /** @description The plan run to compare with */
                from: string;
            };
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description How this plan differs from another one */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanDifference"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Plans_snapshot: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The planning snapshot: everything the plan was made of, to keep, mail or replay */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": Record<string, never>;
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Plans_plan: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The whole plan document with its reasons */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": Record<string, never>;
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Week_read: {
        parameters: {
            query: {
                /** @description Local date, YYYY-MM-DD */
                weekOf: string;
                days?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The week as it is planned now */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Week"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Week_leftOut: {
        parameters: {
            query: {
                cursor?: string;
                limit?: number;
                /** @description Local date, YYYY-MM-DD */
                weekOf: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What the week’s plan left for later: must-dos, then the dearest */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LeftOutItemPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Week_extra: {
        parameters: {
            query: {
                /** @description Local date, YYYY-MM-DD */
                weekOf: string;
                days?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What a quarter of an hour more on each technician’s day would save */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ExtraTime"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Week_confirm: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "weekOf": "2026-06-08",
                 *       "slotMinutes": 60,
                 *       "moveCents": 4000
                 *     }
                 */
                "application/json": components["schemas"]["WeekConfirm"];
            };
        };
        responses: {
            /** @description Every proposed visit of the week that can be made where it stands is promised now */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WeekConfirmed"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Visits_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Local date, YYYY-MM-DD */
                from?: string;
                /** @description Local date, YYYY-MM-DD */
                to?: string;
                /** @description Identifier of a row */
                siteId?: string;
                /** @description Identifier of a row */
                technicianId?: string;
                state?: "proposed" | "confirmed" | "done" | "cancelled";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Visits in order of start */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["VisitPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Visits_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The visit; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Visit"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Visits_change: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that was read */
                "If-Match": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "state": "confirmed",
                 *       "moveCents": 4000
                 *     }
                 */
                "application/json": components["schemas"]["VisitChanges"];
            };
        };
        responses: {
            /** @description The visit as it stands now */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Visit"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            412: components["responses"]["Stale"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            428: components["responses"]["VersionMissing"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Visits_finish: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "finishedAt": "2026-06-08T11:20:00-05:00",
                 *       "signedBy": "Avens Holt",
                 *       "done": [
                 *         "5a3f0c1e-0000-4000-8000-000000000008"
                 *       ],
                 *       "readings": [
                 *         {
                 *           "machineId": "5a3f0c1e-0000-4000-8000-000000000003",
                 *           "hours": "512.4"
                 *         }
                 *       ],
                 *       "charges": {
                 *         "purchaseOrder": "PO-114"
                 *       }
                 *     }
                 */
                "application/json": components["schemas"]["VisitFinish"];
            };
        };
        responses: {
            /** @description The visit is done: its completions and readings are recorded, its stopgaps made good */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Visit"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    VisitAnswers_say: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "kind": "move",
                 *       "reason": "burial at ten",
                 *       "days": [
                 *         "2026-06-11",
                 *         "2026-06-12"
                 *       ]
                 *     }
                 */
                "application/json": components["schemas"]["VisitAnswerCreate"];
            };
        };
        responses: {
            /** @description The shop sees it; what was said of this visit before no longer counts */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["VisitAnswer"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    VisitAnswers_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                siteId?: string;
                /** @description Identifier of a row */
                visitId?: string;
                state?: "noted" | "open" | "met" | "declined" | "withdrawn" | "made" | "given-up";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was said, in order of time */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["VisitAnswerPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    VisitAnswers_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The answer; its ETag is needed to reply */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["VisitAnswer"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    VisitAnswers_reply: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that was read */
                "If-Match": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "decision": "declined",
                 *       "reply": "The part comes on Wednesday only."
                 *     }
                 */
                "application/json": components["schemas"]["VisitAnswerReply"];
            };
        };
        responses: {
            /** @description The site sees it. Moving the visit to a day that suits replies by itself. */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["VisitAnswer"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            412: components["responses"]["Stale"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            428: components["responses"]["VersionMissing"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Moves_prices: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What the visit would cost at every other place of its week */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MovePrices"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Moves_move: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "technicianId": "5a3f0c1e-0000-4000-8000-000000000004",
                 *       "date": "2026-06-09"
                 *     }
                 */
                "application/json": components["schemas"]["VisitMove"];
            };
        };
        responses: {
            /** @description The visit stands elsewhere now, and its neighbours have their new times */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["VisitMoved"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Moves_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Changes made to planned weeks, in order of time */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WeekChangePage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    RoadCallAnswers_symptoms: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What a caller can tell, and what to ask */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SymptomList"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    RoadCallAnswers_options: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "daysAhead": 3
                 *     }
                 */
                "application/json": components["schemas"]["RoadCallOptionsAsk"];
            };
        };
        responses: {
            /** @description The best ways to fit the call into the planned days as they stand now */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RoadCallOptions"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    RoadCallAnswers_choose: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "kind": "squeeze-in",
                 *       "stamp": "as the options said"
                 *     }
                 */
                "application/json": components["schemas"]["RoadCallChoice"];
            };
        };
        responses: {
            /** @description The call is planned; everybody concerned stands at the new time */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RoadCall"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    VisitBar_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The row; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["VisitBar"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    VisitBar_remove: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description It is gone */
            204: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    VisitBar_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                siteId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list, ordered by siteId */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["VisitBarPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    VisitBar_add: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "siteId": "5a3f0c1e-0000-4000-8000-000000000002",
                 *       "technicianId": "5a3f0c1e-0000-4000-8000-000000000004",
                 *       "reason": "asked for another"
                 *     }
                 */
                "application/json": components["schemas"]["VisitBarCreate"];
            };
        };
        responses: {
            /** @description A new visitbar */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["VisitBar"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    SiteEvent_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The row; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SiteEvent"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    SiteEvent_remove: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description It is gone */
            204: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    SiteEvent_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                siteId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list, ordered by eventDate */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SiteEventPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    SiteEvent_add: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "siteId": "5a3f0c1e-0000-4000-8000-000000000002",
                 *       "date": "2026-06-12",
                 *       "from": "15:00",
                 *       "name": "all machines able to mow"
                 *     }
                 */
                "application/json": components["schemas"]["SiteEventCreate"];
            };
        };
        responses: {
            /** @description A new siteevent */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SiteEvent"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Supplies_orders: {
        parameters: {
            query?: {
                weeks?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What to order by when, the most urgent first */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OrderList"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Supplies_alerts: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What needs a decision, each with the next best thing to do */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AlertList"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    ChargeSettings_read: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description How the shop charges; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ChargeSettings"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    ChargeSettings_change: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that was read */
                "If-Match": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "seller": {
                 *         "legalName": "Our Shop LLC",
                 *         "taxNumber": "",
                 *         "address": {
                 *           "street": "4 Mill Lane",
                 *           "city": "Ames",
                 *           "postalCode": "50010",
                 *           "subdivision": "IA",
                 *           "country": "US"
                 *         }
                 *       },
                 *       "labour": {
                 *         "basis": "actual",
                 *         "ratePerHour": "95.00",
                 *         "roundToMinutes": 15,
                 *         "rounding": "up",
                 *         "roundEach": "visit"
                 *       },
                 *       "travel": {
                 *         "rule": "visit-fee",
                 *         "fee": "45.00"
                 *       }
                 *     }
                 */
                "application/json": components["schemas"]["ChargeSettingsChanges"];
            };
        };
        responses: {
            /** @description The settings as they stand now; documents issued before stay as they are */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ChargeSettings"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            412: components["responses"]["Stale"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            428: components["responses"]["VersionMissing"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    ChargeSettings_readCustomer: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What differs for this customer; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CustomerCharges"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    ChargeSettings_changeCustomer: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that was read */
                "If-Match": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "minimumCharge": "60.00"
                 *     }
                 */
                "application/json": components["schemas"]["CustomerChargesChanges"];
            };
        };
        responses: {
            /** @description What differs for this customer now */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CustomerCharges"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            412: components["responses"]["Stale"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            428: components["responses"]["VersionMissing"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    ChargeDocuments_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                state?: "draft" | "issued";
                kind?: "invoice" | "credit";
                /** @description Identifier of a row */
                customerId?: string;
                /** @description Identifier of a row */
                siteId?: string;
                /** @description Identifier of a row */
                visitId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Documents in order of making; supervisors see issued ones of their sites, if the shop wants it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ChargeDocumentPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    ChargeDocuments_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The document; the ETag of a draft is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ChargeDocument"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    ChargeDocuments_change: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that was read */
                "If-Match": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "purchaseOrder": "PO-115"
                 *     }
                 */
                "application/json": components["schemas"]["ChargeFacts"];
            };
        };
        responses: {
            /** @description The draft, computed anew by the settings of today */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ChargeDocument"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            412: components["responses"]["Stale"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            428: components["responses"]["VersionMissing"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    ChargeDocuments_since: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What its visit’s records say by now, against what it charges; an amendment charges it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ChargesSince"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    ChargeDocuments_leave: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "reason": "the customer pays it as it is"
                 *     }
                 */
                "application/json": components["schemas"]["ChargeLeave"];
            };
        };
        responses: {
            /** @description It stays as it is, although its visit’s records say otherwise; what comes to light later is told */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ChargesSince"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    ChargeDocuments_ubl: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description UBL 2.1 */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/xml": string;
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    ChargeDocuments_pdf: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description To be read by people */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/pdf": string;
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    ChargeDocuments_issue: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /** @example {} */
                "application/json": components["schemas"]["Empty"];
            };
        };
        responses: {
            /** @description It has its number now and cannot be changed any more; accounting sees it */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ChargeDocument"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    ChargeDocuments_credit: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "reason": "billed to the wrong site"
                 *     }
                 */
                "application/json": components["schemas"]["ChargeCredit"];
            };
        };
        responses: {
            /** @description The credit, issued: it takes the whole document back */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ChargeDocument"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    ChargeDocuments_amend: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "reason": "order number was missing",
                 *       "facts": {
                 *         "purchaseOrder": "PO-116"
                 *       }
                 *     }
                 */
                "application/json": components["schemas"]["ChargeAmendment"];
            };
        };
        responses: {
            /** @description The document is credited; this is the draft that stands for it */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ChargeDocument"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Accounting_changes: {
        parameters: {
            query?: {
                /** @description The last sequence you have handled */
                after?: number;
                limit?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What happened to issued documents after the sequence you handled last */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AccountingChanges"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Accounting_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The issued document as JSON */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ChargeDocument"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Accounting_ubl: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description UBL 2.1 */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/xml": string;
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Accounting_pdf: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description To be read by people */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/pdf": string;
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Accounting_acknowledge: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "receiverNumber": "L-1042"
                 *     }
                 */
                "application/json": components["schemas"]["Acknowledgement"];
            };
        };
        responses: {
            /** @description Taken over under your own number; the same again changes nothing */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ChargeDocument"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Accounting_paid: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "paidOn": "2026-07-01",
                 *       "reference": "check 12"
                 *     }
                 */
                "application/json": components["schemas"]["Payment"];
            };
        };
        responses: {
            /** @description Marked as paid; the same again changes nothing */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ChargeDocument"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Accounting_refuse: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "reason": "unknown order number"
                 *     }
                 */
                "application/json": components["schemas"]["Refusal"];
            };
        };
        responses: {
            /** @description Refused: the shop sees why; the same again changes nothing */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ChargeDocument"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Accounting_journal: {
        parameters: {
            query: {
                /** @description Local date, YYYY-MM-DD */
                from: string;
                /** @description Local date, YYYY-MM-DD */
                to: string;
                format?: "csv" | "jsonl";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Rows of the documents issued in these days; the same bytes whenever it is asked for again */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "text/csv": string;
                    "application/jsonl": string;
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Accounting_reconcile: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "from": "2026-01-01",
                 *       "to": "2026-12-31",
                 *       "known": [
                 *         {
                 *           "documentId": "5a3f0c1e-0000-4000-8000-000000000011",
                 *           "totalCents": 26532,
                 *           "receiverNumber": "L-1042"
                 *         }
                 *       ]
                 *     }
                 */
                "application/json": components["schemas"]["Reconciliation"];
            };
        };
        responses: {
            /** @description What you lack of these days, and what differs */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Reconciled"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Audit_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                machineId?: string;
                /** @description Identifier of a row */
                subjectId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Who did what, the oldest first */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AuditEntryPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Webhooks_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Where events go */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WebhookEndpointPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Webhooks_create: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "url": "https://receiver.example/hook",
                 *       "types": [
                 *         "visit.done",
                 *         "document.issued"
                 *       ]
                 *     }
                 */
                "application/json": components["schemas"]["WebhookEndpointCreate"];
            };
        };
        responses: {
            /** @description The endpoint and its secret, shown only this once */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WebhookEndpointCreated"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Webhooks_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The endpoint; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WebhookEndpoint"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Webhooks_remove: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Nothing is sent there any more; what has waited is dropped */
            204: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Webhooks_change: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that was read */
                "If-Match": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "types": [
                 *         "document.issued",
                 *         "document.credited"
                 *       ]
                 *     }
                 */
                "application/json": components["schemas"]["WebhookEndpointChanges"];
            };
        };
        responses: {
            /** @description The endpoint now; made active again, it gets what has waited */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WebhookEndpoint"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            412: components["responses"]["Stale"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            428: components["responses"]["VersionMissing"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Webhooks_rotate: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "overlapHours": 24
                 *     }
                 */
                "application/json": components["schemas"]["WebhookRotate"];
            };
        };
        responses: {
            /** @description The new secret, shown only this once; until the overlap ends both sign */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WebhookEndpointCreated"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Webhooks_test: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description An event of the type endpoint.test is on its way: see its deliveries */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WebhookRetried"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Webhooks_retry: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description All that waits is tried again now */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WebhookRetried"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Webhooks_deliveries: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                state?: "waiting" | "delivered";
            };
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was sent there, how often, and what came back */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WebhookDeliveryPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    CalendarAddresses_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Addresses in order of making, revoked ones included */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CalendarAddressPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    CalendarAddresses_create: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "name": "Wall screen",
                 *       "siteId": "5a3f0c1e-0000-4000-8000-000000000002"
                 *     }
                 */
                "application/json": components["schemas"]["CalendarAddressCreate"];
            };
        };
        responses: {
            /** @description The address, shown only this once */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CalendarAddressCreated"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    CalendarAddresses_revoke: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The address leads nowhere any more */
            204: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    CalendarFeed_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The secret, with .ics after it */
                file: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description iCalendar (RFC 5545). Times are UTC; a visit keeps its UID, SEQUENCE grows when it is moved, and one that was given up stays as CANCELLED for a while */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "text/calendar": string;
                };
            };
            /** @description Nothing has changed since the ETag in If-None-Match */
            304: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    SiteContact_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The row; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SiteContact"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    SiteContact_remove: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description It is gone */
            204: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    SiteContact_change: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that was read */
                "If-Match": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "notices": [
                 *         "visit.promised",
                 *         "visit.moved",
                 *         "visit.done"
                 *       ]
                 *     }
                 */
                "application/json": components["schemas"]["SiteContactChanges"];
            };
        };
        responses: {
            /** @description The changed sitecontact */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SiteContact"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            412: components["responses"]["Stale"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            428: components["responses"]["VersionMissing"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    SiteContact_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                siteId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the list, ordered by email */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SiteContactPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    SiteContact_add: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "siteId": "5a3f0c1e-0000-4000-8000-000000000002",
                 *       "name": "Avens Holt",
                 *       "email": "a.holt@sedge-trust.example",
                 *       "language": "en",
                 *       "notices": [
                 *         "visit.promised",
                 *         "visit.moved"
                 *       ]
                 *     }
                 */
                "application/json": components["schemas"]["SiteContactCreate"];
            };
        };
        responses: {
            /** @description A new sitecontact */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SiteContact"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Notices_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description Identifier of a row */
                siteId?: string;
                state?: "waiting" | "sent" | "refused" | "given-up" | "superseded";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What contacts were told by e-mail, newest first, and what became of it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["NoticeList"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Notices_retry: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description It is tried again now, unless it was sent or newer news took its place */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WebhookRetried"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    Snapshots_take: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description A fleet snapshot of ISO/TS 15143-3 (AEMP 2.0), XML or JSON in UTF-8, at most 256 MiB; read while it comes in. Sent again, it changes nothing. */
        requestBody: {
            content: {
                "application/xml": string;
                "text/xml": string;
                /**
                 * @example {
                 *       "Fleet": {
                 *         "version": "1",
                 *         "snapshotTime": "2026-06-04T06:00:00Z",
                 *         "Equipment": [
                 *           {
                 *             "EquipmentHeader": {
                 *               "OEMName": "Invented",
                 *               "Model": "Z3",
                 *               "EquipmentID": "unit 12",
                 *               "SerialNumber": "SN-0099"
                 *             },
                 *             "CumulativeOperatingHours": {
                 *               "datetime": "2026-06-04T05:58:00Z",
                 *               "Hour": "418.3"
                 *             }
                 *           }
                 *         ]
                 *       }
                 *     }
                 */
                "application/json": {
                    [key: string]: unknown;
                };
            };
        };
        responses: {
            /** @description What was taken in; hours go through the same cleaning as all others */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SnapshotTaken"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    TelematicsUnits_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
                /** @description false = whose machine is not known, and which nobody has put aside */
                matched?: "true" | "false";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Machines heard from, in order of first hearing */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TelematicsUnitPage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    TelematicsUnits_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The machine as it was heard; its ETag is needed to match it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TelematicsUnit"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    TelematicsUnits_match: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that was read */
                "If-Match": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "machineId": "5a3f0c1e-0000-4000-8000-000000000003"
                 *     }
                 */
                "application/json": components["schemas"]["TelematicsMatch"];
            };
        };
        responses: {
            /** @description Matched by hand, which stays; its last reading has entered, later ones will */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TelematicsUnit"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            412: components["responses"]["Stale"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            428: components["responses"]["VersionMissing"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    TelematicsSources_list: {
        parameters: {
            query?: {
                cursor?: string;
                limit?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Sources, and how the last look at each went */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TelematicsSourcePage"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    TelematicsSources_create: {
        parameters: {
            query?: never;
            header: {
                /** @description A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "name": "fleet link",
                 *       "url": "https://telematics.example/Fleet/1",
                 *       "authorization": "Bearer of-the-sender",
                 *       "everySeconds": 3600
                 *     }
                 */
                "application/json": components["schemas"]["TelematicsSourceCreate"];
            };
        };
        responses: {
            /** @description It is asked for the first time in a moment */
            201: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TelematicsSource"];
                };
            };
            400: components["responses"]["KeyMissing"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            409: components["responses"]["Conflict"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    TelematicsSources_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The source; its ETag is needed to change it */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TelematicsSource"];
                };
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    TelematicsSources_remove: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description It is not asked any more; what was heard stays */
            204: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content?: never;
            };
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            422: components["responses"]["Unusable"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
    TelematicsSources_change: {
        parameters: {
            query?: never;
            header: {
                /** @description ETag of the version that was read */
                "If-Match": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "everySeconds": 7200
                 *     }
                 */
                "application/json": components["schemas"]["TelematicsSourceChanges"];
            };
        };
        responses: {
            /** @description The source now */
            200: {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TelematicsSource"];
                };
            };
            400: components["responses"]["Unreadable"];
            401: components["responses"]["SignedOut"];
            403: components["responses"]["NotAllowed"];
            404: components["responses"]["NotFound"];
            409: components["responses"]["Conflict"];
            412: components["responses"]["Stale"];
            413: components["responses"]["TooLarge"];
            422: components["responses"]["Unusable"];
            428: components["responses"]["VersionMissing"];
            429: components["responses"]["TooMany"];
            500: components["responses"]["Failed"];
        };
    };
}
